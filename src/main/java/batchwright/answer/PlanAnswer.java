package batchwright.answer;

import batchwright.audit.AuditReport;
import batchwright.explain.cost.Insight;
import batchwright.food.Kitchen;
import batchwright.needs.Needs;
import batchwright.needs.intakes.Intake;
import batchwright.plan.Clashes;
import batchwright.plan.Plan;
import batchwright.plan.Proof;
import batchwright.plan.SecondOpinion;
import batchwright.quantity.Money;
import batchwright.schedule.Schedule;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What a request for a plan came to.
 *
 * @param proof how the search ended; of no meaning when a caution stopped it
 * @param found the plan, if there is one
 * @param clashes rules that cannot all hold, when there is no plan, and what would make one possible
 * @param stuck the days of the cooking session for which nothing was found, if that is why there is no plan
 * @param insight what was asked for beside the plan
 */
public record PlanAnswer(
        Asked asked,
        Status status,
        Proof proof,
        Optional<AuditedPlan> found,
        Clashes clashes,
        Optional<Stretch> stuck,
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

    public PlanAnswer with(Insight other) {
        return new PlanAnswer(asked, status, proof, found, clashes, stuck, other);
    }

    public Kitchen kitchen() {
        return asked.kitchen();
    }

    public List<Needs> needs() {
        return asked.needs();
    }

    public int days() {
        return asked.days();
    }

    public Optional<Money> budget() {
        return asked.budget();
    }

    public Optional<Plan> plan() {
        return found.map(AuditedPlan::plan);
    }

    /** The order of work, when all is cooked in one session. */
    public Optional<Schedule> schedule() {
        return found.map(plan -> plan.schedules().get(0));
    }

    /** What the audit checked; present exactly when a plan is. */
    public Optional<AuditReport> audit() {
        return found.map(AuditedPlan::audit);
    }

    /** Each cooking session of the plan as an answer of its own; for a single session, this one. None without a plan. */
    public List<PlanAnswer> sessions() {
        int sessions = plan().map(plan -> plan.sessions().size()).orElse(0);
        return sessions == 1
                ? List.of(this)
                : IntStream.rangeClosed(1, sessions).mapToObj(this::session).toList();
    }

    private PlanAnswer session(int number) {
        AuditedPlan mine = found.orElseThrow().session(number);
        Proof proven = mine.plan().proof();
        return new PlanAnswer(
                asked.forOne(mine.plan().first()),
                proven.provenCheapest() ? Status.PLANNED : Status.NOT_PROVEN,
                proven,
                Optional.of(mine),
                Clashes.NONE,
                Optional.empty(),
                Insight.NONE);
    }

    /** Whether another solver can show that this answer is wrong. */
    public boolean isContradicted() {
        return insight.secondOpinion()
                .filter(opinion -> opinion.verdict() == SecondOpinion.Verdict.DISAGREES)
                .isPresent();
    }

    /** Whether health cautions, not the search, are why there is no plan. */
    public boolean stoppedByCaution() {
        return needs().stream().anyMatch(Needs::stopsPlanning);
    }

    /** What the average day of an eater's plan holds, beside what is published; empty when there is no plan. */
    public List<Intake> intakes(Needs needs) {
        return plan().flatMap(plan -> plan.averageDay(needs.eater()))
                .map(average -> Intake.of(needs.references(), average))
                .orElse(List.of());
    }
}
