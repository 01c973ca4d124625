package batchwright.answer;

import batchwright.audit.AuditReport;
import batchwright.explain.Insight;
import batchwright.food.Kitchen;
import batchwright.needs.Needs;
import batchwright.needs.intakes.Intake;
import batchwright.plan.Clash;
import batchwright.plan.Plan;
import batchwright.plan.Proof;
import batchwright.plan.SecondOpinion;
import batchwright.quantity.Money;
import java.util.List;
import java.util.Optional;

/**
 * What a request for a plan came to.
 *
 * @param kitchen with every dish there is, those too that were not to be cooked
 * @param named the eaters, as the command named them
 * @param needs of each eater, in the order of the command
 * @param budget most to spend, if there is a limit
 * @param proof how the search ended; of no meaning when a caution stopped it
 * @param plan the plan, if there is one; it has passed the audit
 * @param audit what the audit checked; there exactly when a plan is
 * @param clashes rules that cannot all hold, when there is no plan
 * @param insight what was asked for beside the plan
 */
public record PlanAnswer(
        Kitchen kitchen,
        List<String> named,
        List<Needs> needs,
        int days,
        Optional<Money> budget,
        Status status,
        Proof proof,
        Optional<Plan> plan,
        Optional<AuditReport> audit,
        List<Clash> clashes,
        Insight insight) {
    /** How the search ended. */
    public enum Status {
        /** A plan, proven cheapest. */
        PLANNED("planned"),
        /** Nothing keeps every rule, or a caution stops planning. */
        NO_PLAN("no_plan"),
        /** Time ended before the proof; there may be a plan. */
        NOT_PROVEN("not_proven");

        private final String id;

        Status(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }
    }

    public PlanAnswer {
        named = List.copyOf(named);
        needs = List.copyOf(needs);
        clashes = List.copyOf(clashes);
    }

    public PlanAnswer with(Insight other) {
        return new PlanAnswer(kitchen, named, needs, days, budget, status, proof, plan, audit, clashes, other);
    }

    /** Whether another solver can show that this answer is wrong. */
    public boolean isContradicted() {
        return insight.secondOpinion()
                .filter(opinion -> opinion.verdict() == SecondOpinion.Verdict.DISAGREES)
                .isPresent();
    }

    /** Whether health cautions, not the search, are why there is no plan. */
    public boolean stoppedByCaution() {
        return needs.stream().anyMatch(Needs::stopsPlanning);
    }

    /** What the average day of an eater's plan holds, beside what is published; empty when there is no plan. */
    public List<Intake> intakes(Needs needs) {
        return plan.stream()
                .flatMap(p -> p.eaters().stream()
                        .filter(days -> days.seat().eater().equals(needs.eater()))
                        .flatMap(days -> Intake.of(needs.references(), p.averageDay(days)).stream()))
                .toList();
    }
}
