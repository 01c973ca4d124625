package batchwright.app.roster;

import batchwright.answer.Fault;
import batchwright.answer.PlanAnswer;
import batchwright.answer.roster.Client;
import batchwright.answer.roster.CostShares;
import batchwright.answer.roster.RosterAnswer;
import batchwright.answer.roster.TogetherAnswer;
import batchwright.app.MakePlan;
import batchwright.app.PlanQuestion;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.needs.Needs;
import batchwright.needs.NeedsCalculator;
import batchwright.person.Eater;
import batchwright.plan.Seat;
import batchwright.quantity.Money;
import batchwright.solve.together.AtOnce;
import batchwright.solve.together.TogetherPlanner;
import java.io.BufferedReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Cooks once for all clients of a list: common dishes, one shopping, containers and snacks for each. Who cannot be planned for is left out,
 * with why; the others are cooked for all the same. All clients are kept in mind, so there is a most.
 */
public final class PlanTogether {
    /** Our choice: all of them are kept in memory. */
    public static final int MOST_CLIENTS = 500;

    /** A dish fills two containers at least. */
    private static final int LEAST_DAYS = 2;

    private final AnswerRoster roster;
    private final AnswerRoster.Asks forAll;
    private final Map<String, String> said = new LinkedHashMap<>();
    private final Map<String, Client> clients = new LinkedHashMap<>();
    private final Map<String, Eater> eaters = new LinkedHashMap<>();
    private final List<RosterAnswer> others = new ArrayList<>();

    /** @param forAll what may be said of the plan; by whom does not matter, but not two things */
    public PlanTogether(AnswerRoster roster, AnswerRoster.Asks forAll) {
        this.roster = roster;
        this.forAll = forAll;
    }

    /**
     * To be asked once.
     *
     * @throws Refused when nobody can be cooked for, or not in this kitchen
     */
    public TogetherAnswer answer(BufferedReader list, AnswerRoster.Way way) {
        var lines = new ClientLines(list);
        while (lines.hasNext()) {
            take(lines.next(), way);
            if (clients.size() > MOST_CLIENTS) {
                throw Refused.because(
                        "more than " + MOST_CLIENTS + " clients are to share one kitchen", "Divide the list.");
            }
        }
        PlanQuestion question = question();
        var limit = new EffortLimit(way.work(), way.ends());
        var planner = new TogetherPlanner(new AtOnce(way.threads()), way.work());
        MakePlan.request(workspace(), question)
                .ifPresent(request -> planner.without(request, limit).forEach(this::leaveOut));
        if (limit.isCutShort()) {
            return new TogetherAnswer(List.of(), Optional.empty(), List.of(), List.of(), true);
        }
        PlanAnswer answer = MakePlan.withoutReasons(planner).answer(workspace(), question(), limit, request -> {});
        List<Money> shares =
                answer.plan().map(plan -> CostShares.of(plan.first())).orElse(List.of());
        return new TogetherAnswer(
                List.copyOf(clients.values()), Optional.of(answer), shares, others, limit.isCutShort());
    }

    private Workspace workspace() {
        return roster.shared(eaters);
    }

    private PlanQuestion question() {
        if (eaters.isEmpty()) {
            throw Refused.because(
                    "there is nobody to be cooked for" + firstFault(), "Ask without cooking for all to see each line.");
        }
        PlanQuestion question = forAll.question(List.copyOf(eaters.keySet()), said);
        if (question.days() < LEAST_DAYS) {
            throw Refused.because("one day is no batch for many", "Ask for " + LEAST_DAYS + " days or more.");
        }
        if (workspace().kitchen().equipment().mostHandsOnMinutes().isPresent()) {
            throw Refused.because(
                    "the kitchen limits the minutes of a session, which is not kept when cooking for all",
                    "Take most_minutes and done_within out of foods/kitchen.yaml; the order of work says how long it takes.");
        }
        return question;
    }

    private String firstFault() {
        return others.stream()
                .flatMap(other -> other.faults().stream())
                .findFirst()
                .map(fault -> "; first: " + fault.wrong())
                .orElse("");
    }

    private void take(Client client, AnswerRoster.Way way) {
        try {
            if (client.wrong().isPresent()) {
                throw Refused.because(client.wrong().get(), "Correct the line.");
            }
            Map<String, String> asked = asked(client);
            Map.Entry<String, Eater> one =
                    roster.eaters(List.of(client)).entrySet().iterator().next();
            if (eaters.containsKey(one.getKey())) {
                throw Refused.because(
                        "two clients have the short name " + one.getKey(), "Name each once, by different ids.");
            }
            Needs needs = NeedsCalculator.needsOf(one.getValue());
            if (needs.stopsPlanning() || needs.target().isEmpty()) {
                others.add(roster.answer(List.of(client), way));
                return;
            }
            said.putAll(asked);
            eaters.put(one.getKey(), one.getValue());
            clients.put(one.getKey(), client);
        } catch (Refused refused) {
            others.add(RosterAnswer.wrong(List.of(client), refused.faults()));
        }
    }

    /** What the line says of the plan for all; the first that says something is right. */
    private Map<String, String> asked(Client client) {
        Set<String> ofOne = roster.asks().columns().stream()
                .filter(client.said()::containsKey)
                .filter(column -> !forAll.columns().contains(column))
                .collect(Collectors.toSet());
        if (!ofOne.isEmpty()) {
            throw Refused.because(
                    "the line asks for " + ofOne.stream().sorted().collect(Collectors.joining(", "))
                            + ", which one client cannot when all is cooked for all",
                    "Leave that out.");
        }
        Map<String, String> asked = new LinkedHashMap<>();
        for (String column : forAll.columns()) {
            String mine = client.said().get(column);
            if (mine != null) {
                String theirs = said.getOrDefault(column, mine);
                if (!theirs.equals(mine)) {
                    throw Refused.because(
                            "the line asks for " + column + " " + mine + ", a line before it for " + theirs,
                            "All is cooked for all: say the same, or say it once.");
                }
                asked.put(column, mine);
            }
        }
        return asked;
    }

    private void leaveOut(Seat seat) {
        String id = seat.eater().id();
        eaters.remove(id);
        Client client = clients.remove(id);
        if (client != null) {
            others.add(RosterAnswer.wrong(
                    List.of(client),
                    List.of(Fault.of(
                            "no plan was found for this client, even alone",
                            "Ask for this client alone: the answer says what stands in the way."))));
        }
    }
}
