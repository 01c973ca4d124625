package batchwright.page.desk;

import batchwright.answer.EatenFirst;
import batchwright.answer.Fault;
import batchwright.answer.PlanAnswer;
import batchwright.app.FailedAudit;
import batchwright.app.InsightWanted;
import batchwright.app.PlanQuestion;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.app.book.EatFirst;
import batchwright.app.desk.Behind;
import batchwright.app.desk.Desk;
import batchwright.app.desk.Sliders;
import batchwright.plan.Watch;
import batchwright.report.print.Show;
import io.javalin.http.sse.SseClient;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;

/**
 * What lies on somebody's desk: the wish, the plan it came to and the one before. A wish is answered twice: at once near the plan before,
 * then by the whole search. A new wish ends both for the one before; an answer is shown only if nothing else was asked meanwhile.
 */
final class DeskBoard {
    private static final int MOST_LISTENERS = 8;

    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        var thread = new Thread(work, "desk");
        thread.setDaemon(true);
        return thread;
    });
    private final List<SseClient> listeners = new CopyOnWriteArrayList<>();
    private State state = new State(0, DeskWish.USUAL, Optional.empty(), Optional.empty(), Optional.empty());
    private int stamps;
    private Optional<Held> held = Optional.empty();
    private Optional<Worked> worked = Optional.empty();

    /** How the newest wish was worked out. */
    private record Worked(int number, Desk desk, Sliders sliders) {}

    /** What answers as long as only sliders move. */
    private record Held(Desk desk, Behind behind) {}

    /**
     * @param number of the wish
     * @param working what is known of the search; empty when none runs
     * @param found what is shown, perhaps still that of an earlier wish
     * @param before the last plan that was found for another wish
     */
    record State(
            int number, DeskWish wish, Optional<String> working, Optional<Found> found, Optional<PlanAnswer> before) {
        State working(String says) {
            return new State(number, wish, Optional.of(says), found, before);
        }

        /** What is shown, where more can be found out about it: one cooking session whose last answer is a plan within the budget. */
        Optional<Outcome> explained() {
            return found.filter(shown -> shown.checked() && shown.number() == number)
                    .map(Found::outcome)
                    .filter(outcome -> wish.sessions().equals("1"))
                    .filter(outcome ->
                            outcome.answer().filter(DeskBoard::isAffordable).isPresent());
        }
    }

    /**
     * @param stamp rises with everything that is shown
     * @param number of the wish it answers
     * @param checked whether it is the last answer to it
     */
    record Found(int stamp, int number, boolean checked, Outcome outcome) {}

    /**
     * @param answer empty when nothing needs to be cooked, or when it was refused
     * @param refused why it could not be worked out; empty when it was
     */
    record Outcome(EatenFirst first, Optional<PlanAnswer> answer, String refused) {
        static Outcome of(EatenFirst first, PlanAnswer answer) {
            return new Outcome(first, Optional.of(answer), "");
        }
    }

    synchronized State state() {
        return state;
    }

    /** Begins to answer; what runs for the wish before ends. */
    synchronized void ask(DeskWish wish, Workspace workspace) {
        held.ifPresent(mine -> mine.behind().stop());
        int number = state.number() + 1;
        Optional<PlanAnswer> before = state.found()
                .flatMap(found -> found.outcome().answer())
                .filter(answer -> answer.plan().isPresent())
                .or(state::before);
        state = new State(number, wish, Optional.of("Searching."), state.found(), before);
        worker.execute(() -> answer(number, wish, workspace));
    }

    private synchronized boolean isNewest(int number) {
        return state.number() == number;
    }

    private void answer(int number, DeskWish wish, Workspace workspace) {
        if (!isNewest(number)) {
            return;
        }
        try {
            PlanQuestion question = wish.question();
            EatenFirst first = EatFirst.of(workspace.quietly(), question.eaters(), question.days());
            int rest = question.days() - first.days();
            if (rest == 0) {
                show(number, new Outcome(first, Optional.empty(), ""), true);
            } else {
                answer(number, first, question, wish.sliders(question).withDays(rest), workspace.on(first.next()));
            }
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
            failed(number, fault);
        }
    }

    private void answer(int number, EatenFirst first, PlanQuestion question, Sliders sliders, Workspace workspace) {
        Held mine = held(question, workspace);
        remember(new Worked(number, mine.desk(), sliders));
        PlanAnswer quick = mine.desk().quick(sliders);
        boolean isLast = quick.status() == PlanAnswer.Status.PLANNED || quick.stoppedByCaution();
        if (isLast || isAffordable(quick)) {
            show(number, Outcome.of(first, quick), isLast);
        }
        if (!isLast && isNewest(number)) {
            var listener = new DeskSearch(this, number, first, quick.kitchen().currency());
            var unused = mine.behind().begin(sliders, listener);
        }
    }

    private synchronized void remember(Worked newest) {
        worked = Optional.of(newest);
    }

    /**
     * Begins to find out more about the plan that is shown; a newer wish ends it.
     *
     * @return whether it began: only for the last answer to a wish, and while nothing else is worked out
     */
    synchronized boolean find(InsightWanted wanted) {
        Optional<Outcome> outcome = state.explained();
        Optional<Worked> mine = worked.filter(each -> each.number() == state.number());
        if (outcome.isEmpty() || mine.isEmpty() || state.working().isPresent()) {
            return false;
        }
        state = state.working("Working out other plans to compare with.");
        worker.execute(() -> find(mine.get(), outcome.get(), wanted));
        return true;
    }

    private void find(Worked mine, Outcome outcome, InsightWanted wanted) {
        int number = mine.number();
        Watch newer = () -> !isNewest(number);
        try {
            working(number, "Working out other plans to compare with.");
            PlanAnswer more = mine.desk()
                    .insight(
                            mine.sliders(),
                            outcome.answer().orElseThrow(),
                            wanted,
                            newer,
                            plans -> working(
                                    number,
                                    "Working out other plans to compare with: " + Show.count(plans, "plan", "plans")
                                            + " so far."));
            show(number, Outcome.of(outcome.first(), more), true);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
            failed(number, fault);
        }
    }

    private static boolean isAffordable(PlanAnswer answer) {
        return answer.plan()
                .filter(plan -> answer.budget()
                        .filter(budget -> plan.cost().compareTo(budget) > 0)
                        .isEmpty())
                .isPresent();
    }

    private synchronized Held held(PlanQuestion question, Workspace workspace) {
        Optional<Held> fitting = held.filter(
                mine -> mine.desk().isFor(question, workspace.quietly().kitchen()));
        if (fitting.isPresent()) {
            return fitting.get();
        }
        Desk desk = Desk.of(workspace, question);
        held.ifPresent(mine -> mine.behind().close());
        var made = new Held(desk, new Behind(desk));
        held = Optional.of(made);
        return made;
    }

    /** It cannot be worked out. */
    void failed(int number, Throwable fault) {
        var none = EatenFirst.none(LocalDate.EPOCH);
        show(number, new Outcome(none, Optional.empty(), why(fault)), true);
    }

    private static String why(Throwable fault) {
        if (fault instanceof Refused refused) {
            return refused.faults().stream().map(DeskBoard::sentence).collect(Collectors.joining(" "));
        }
        return fault instanceof FailedAudit
                ? "A fault of ours: the plan did not pass its audit, so it is not shown."
                : "Something went wrong inside the program; no plan is shown.";
    }

    static String sentence(Fault fault) {
        String wrong = fault.wrong();
        return Character.toUpperCase(wrong.charAt(0)) + wrong.substring(1) + ". " + fault.cure();
    }

    /** How far the search for a wish is. */
    void working(int number, String says) {
        synchronized (this) {
            if (state.number() != number) {
                return;
            }
            state = state.working(says);
        }
        send("progress", says);
    }

    /** An answer to a wish. */
    void show(int number, Outcome outcome, boolean isLast) {
        int stamp;
        synchronized (this) {
            if (state.number() != number) {
                return;
            }
            stamp = ++stamps;
            state = new State(
                    number,
                    state.wish(),
                    isLast ? Optional.empty() : Optional.of("Searching."),
                    Optional.of(new Found(stamp, number, isLast, outcome)),
                    state.before());
        }
        send("answer", Integer.toString(stamp));
        if (isLast) {
            send("progress", "");
        }
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
        now.found().ifPresent(found -> client.sendEvent("answer", Integer.toString(found.stamp())));
    }

    /** So that a window that was closed is noticed. */
    void knock() {
        listeners.forEach(client -> client.sendComment("still here"));
    }

    private void send(String event, String data) {
        listeners.forEach(client -> client.sendEvent(event, data));
    }

    synchronized void close() {
        held.ifPresent(mine -> mine.behind().close());
        listeners.forEach(SseClient::close);
        worker.shutdownNow();
    }
}
