package batchwright.app.roster;

import batchwright.answer.Fault;
import batchwright.answer.PlanAnswer;
import batchwright.answer.roster.Client;
import batchwright.answer.roster.LastWeighed;
import batchwright.answer.roster.RosterAnswer;
import batchwright.app.FailedAudit;
import batchwright.app.MakePlan;
import batchwright.app.PlanQuestion;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.book.Book;
import batchwright.book.Event;
import batchwright.files.disk.Read;
import batchwright.food.Kitchen;
import batchwright.person.Eater;
import java.io.BufferedReader;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Answers the clients of a list, each pot by the use case that answers one plan. The kitchen is read once. A search ends by the work it
 * has done, not by the clock, so the answers are the same on every machine and with any number of threads.
 */
public final class AnswerRoster {
    /** As many as share the pots of a plan. */
    public static final int MOST_OF_A_POT = 6;
    /** About what a core does in a second, once the code is compiled. */
    public static final long WORK_OF_AN_EFFORT = 1_000_000_000;

    private final Workspace workspace;
    private final Asks asks;
    private final Kitchen kitchen;
    private final Read<Book> book;

    /** From the cells of a line to a question. */
    public interface Asks {
        /** Columns that it reads. */
        Set<String> columns();

        /** @throws Refused when a cell cannot be read */
        PlanQuestion question(List<String> eaters, Map<String, String> said);
    }

    /**
     * How a list is worked through.
     *
     * @param work that each search may do, as {@link batchwright.plan.Watch#stop(long)} counts it
     * @param threads how many clients are answered at once
     * @param inOrder whether answers come in the order of the list, or as soon as they are there
     * @param ends whether to end before the end of the list
     */
    public record Way(long work, int threads, boolean inOrder, BooleanSupplier ends) {}

    /** @throws Refused when a file has an error */
    public AnswerRoster(Workspace workspace, Asks asks) {
        this.workspace = workspace.quietly();
        this.asks = asks;
        this.kitchen = workspace.kitchen();
        this.book = new Read<>(Optional.of(workspace.book()), List.of());
    }

    /**
     * Works through a list.
     *
     * @param isAnswered whether a client was answered in an earlier run
     * @param words turns an answer into what is handed on; called by several threads
     * @param results called by the thread that called this
     */
    public <R> void run(
            BufferedReader list,
            Predicate<Client> isAnswered,
            Way way,
            Function<RosterAnswer, R> words,
            Consumer<R> results) {
        var open = new OpenPots(new Pots(new ClientLines(list)), isAnswered);
        new InParallel(way.threads(), way.inOrder())
                .run(open, pot -> words.apply(answer(pot, way)), way.ends(), results);
    }

    /** What these clients are answered; faults of ours are answers, too, so that one line costs no other. */
    public RosterAnswer answer(List<Client> pot, Way way) {
        try {
            return planned(pot, way);
        } catch (Refused refused) {
            return RosterAnswer.wrong(pot, refused.faults());
        } catch (FailedAudit failed) {
            return RosterAnswer.wrong(
                    pot,
                    List.of(Fault.of(
                            "a fault of ours: the plan did not pass its audit, so it is not shown",
                            "Failed checks: " + failed.failures())));
        } catch (RuntimeException | StackOverflowError fault) {
            return RosterAnswer.wrong(
                    pot,
                    List.of(Fault.of(
                            "a fault of ours: the program met something it cannot handle",
                            "Ask for this client alone to see where it happened.")));
        }
    }

    private RosterAnswer planned(List<Client> pot, Way way) {
        for (Client client : pot) {
            if (client.wrong().isPresent()) {
                throw Refused.because(client.wrong().get(), "Correct the line.");
            }
        }
        if (pot.size() > MOST_OF_A_POT) {
            throw Refused.because(
                    pot.size() + " clients share a pot", "At most " + MOST_OF_A_POT + " do: divide them.");
        }
        Map<String, Eater> eaters = eaters(pot);
        var limit = new EffortLimit(way.work(), way.ends());
        Workspace shared = shared(eaters);
        PlanQuestion question = asks.question(List.copyOf(eaters.keySet()), said(pot));
        PlanAnswer answer = new MakePlan().answer(shared, question, limit, request -> {});
        return limit.isCutShort() ? RosterAnswer.cut(pot) : RosterAnswer.of(pot, answer, weighed(pot, eaters));
    }

    /** The kitchen that was read, for these eaters. */
    Workspace shared(Map<String, Eater> eaters) {
        return workspace.from(new SharedKitchen(workspace.source(), kitchen, book, eaters));
    }

    Asks asks() {
        return asks;
    }

    Map<String, Eater> eaters(List<Client> pot) {
        Workspace once = shared(Map.of());
        Map<String, Eater> eaters = new LinkedHashMap<>();
        for (Client client : pot) {
            boolean named = client.said().containsKey(Client.PROFILE);
            Eater eater = new ClientEater(named ? workspace : once, kitchen, asks.columns()).of(client);
            if (eaters.putIfAbsent(eater.id(), eater) != null) {
                throw Refused.because(
                        "two clients of a pot have the short name " + eater.id(), "Name each once, by different ids.");
            }
        }
        return eaters;
    }

    /** Eaters stand in the order of their clients. */
    private Map<String, LastWeighed> weighed(List<Client> pot, Map<String, Eater> eaters) {
        Map<String, LastWeighed> weighed = new LinkedHashMap<>();
        int number = 0;
        for (Eater eater : eaters.values()) {
            String client = pot.get(number).id();
            number++;
            lastOf(eater).ifPresent(last -> weighed.put(client, last));
        }
        return weighed;
    }

    private Optional<LastWeighed> lastOf(Eater eater) {
        return book.value()
                .flatMap(all -> all.all(Event.Weighed.class)
                        .filter(of -> of.event().eater().equals(eater.id()))
                        .reduce((earlier, later) -> later))
                .map(of -> new LastWeighed(
                        of.day(),
                        of.event().kg(),
                        BigDecimal.valueOf(eater.body().weight().kg())));
    }

    /** What the lines of a pot ask for: said in one of them, or alike in several. */
    private Map<String, String> said(List<Client> pot) {
        Map<String, String> said = new LinkedHashMap<>();
        for (String column : asks.columns()) {
            List<String> values = pot.stream()
                    .flatMap(client -> Optional.ofNullable(client.said().get(column)).stream())
                    .distinct()
                    .toList();
            if (values.size() > 1) {
                throw Refused.because(
                        "the lines of a pot ask for " + column + " " + String.join(" and ", values),
                        "Say it in one of them.");
            }
            values.forEach(value -> said.put(column, value));
        }
        return said;
    }
}
