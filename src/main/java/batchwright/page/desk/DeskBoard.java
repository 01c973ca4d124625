package batchwright.page.desk;

import batchwright.answer.EatenFirst;
import batchwright.answer.Fault;
import batchwright.answer.PlanAnswer;
import batchwright.app.FailedAudit;
import batchwright.app.MakePlan;
import batchwright.app.PlanQuestion;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.app.book.EatFirst;
import io.javalin.http.sse.SseClient;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;

/**
 * What lies on somebody's desk: the wish, the search that runs for it, the plan it came to and the one before. A new wish ends the search
 * for the one before; an answer is shown only if nothing else was asked meanwhile.
 */
final class DeskBoard {
    private static final int MOST_LISTENERS = 8;

    private final MakePlan plans;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        var thread = new Thread(work, "desk");
        thread.setDaemon(true);
        return thread;
    });
    private final List<SseClient> listeners = new CopyOnWriteArrayList<>();
    private State state = new State(0, DeskWish.USUAL, Optional.empty(), Optional.empty(), Optional.empty());
    private Optional<SearchWatch> running = Optional.empty();

    /**
     * @param number of the wish
     * @param working what the search knows; empty when none runs
     * @param found what it came to
     * @param before the last plan that was found for another wish
     */
    record State(
            int number, DeskWish wish, Optional<String> working, Optional<Found> found, Optional<PlanAnswer> before) {}

    /**
     * @param answer empty when nothing needs to be cooked, or when it was refused
     * @param refused why it could not be worked out; empty when it was
     */
    record Found(EatenFirst first, Optional<PlanAnswer> answer, String refused) {}

    DeskBoard(MakePlan plans) {
        this.plans = plans;
    }

    synchronized State state() {
        return state;
    }

    /** Begins a search; the one before ends. */
    synchronized void ask(DeskWish wish, Workspace workspace) {
        running.ifPresent(SearchWatch::end);
        int number = state.number() + 1;
        Optional<PlanAnswer> before =
                state.found().flatMap(Found::answer).filter(a -> a.plan().isPresent()).or(state::before);
        state = new State(number, wish, Optional.of("Searching."), state.found(), before);
        var watch = new SearchWatch(says -> working(number, says));
        running = Optional.of(watch);
        PlanQuestion question = wish.question();
        worker.execute(() -> search(number, workspace, question, watch));
    }

    private void search(int number, Workspace workspace, PlanQuestion question, SearchWatch watch) {
        if (watch.stop()) {
            return;
        }
        Found found;
        try {
            EatenFirst first = EatFirst.of(workspace.quietly(), question.eaters(), question.days());
            found = first.days() == question.days()
                    ? new Found(first, Optional.empty(), "")
                    : new Found(
                            first,
                            Optional.of(plans.answer(
                                    workspace.on(first.next()),
                                    question.withDays(question.days() - first.days()),
                                    watch,
                                    request -> {})),
                            "");
        } catch (Refused refused) {
            found = refused(workspace, refused.faults().stream().map(DeskBoard::sentence).collect(Collectors.joining(" ")));
        } catch (FailedAudit audit) {
            found = refused(workspace, "A fault of ours: the plan did not pass its audit, so it is not shown.");
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
            found = refused(workspace, "Something went wrong inside the program; no plan is shown.");
        }
        done(number, found);
    }

    private static Found refused(Workspace workspace, String why) {
        return new Found(EatenFirst.none(workspace.cookingDay()), Optional.empty(), why);
    }

    private static String sentence(Fault fault) {
        String wrong = fault.wrong();
        return Character.toUpperCase(wrong.charAt(0)) + wrong.substring(1) + ". " + fault.cure();
    }

    private void working(int number, String says) {
        synchronized (this) {
            if (state.number() != number) {
                return;
            }
            state = new State(number, state.wish(), Optional.of(says), state.found(), state.before());
        }
        send("progress", says);
    }

    private void done(int number, Found found) {
        synchronized (this) {
            if (state.number() != number) {
                return;
            }
            state = new State(number, state.wish(), Optional.empty(), Optional.of(found), state.before());
            running = Optional.empty();
        }
        send("progress", "");
        send("answer", Integer.toString(number));
    }

    /** Somebody looks at the desk in one more window. */
    void listen(SseClient client) {
        while (listeners.size() >= MOST_LISTENERS) {
            listeners.remove(0).close();
        }
        listeners.add(client);
        client.onClose(() -> listeners.remove(client));
        State now = state();
        client.sendEvent("progress", now.working().orElse(""));
        if (now.found().isPresent() && now.working().isEmpty()) {
            client.sendEvent("answer", Integer.toString(now.number()));
        }
    }

    /** So that a window that was closed is noticed. */
    void knock() {
        listeners.forEach(client -> client.sendComment("still here"));
    }

    private void send(String event, String data) {
        listeners.forEach(client -> client.sendEvent(event, data));
    }

    synchronized void close() {
        running.ifPresent(SearchWatch::end);
        listeners.forEach(SseClient::close);
        worker.shutdownNow();
    }
}
