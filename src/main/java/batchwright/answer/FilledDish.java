package batchwright.answer;

import batchwright.audit.AuditReport;
import batchwright.explain.cost.Insight;
import batchwright.food.Nutrient;
import batchwright.plan.Clashes;
import batchwright.plan.DishAnswer;
import batchwright.plan.DishRequest;
import batchwright.plan.Reach;
import java.util.List;
import java.util.Optional;

/**
 * What a request for containers of one dish came to.
 *
 * @param audit what the audit checked; present exactly when containers are
 */
public record FilledDish(DishRequest request, DishAnswer answer, Optional<AuditReport> audit) {
    /** As a plan for nobody on the cooking day, so that the same classes report what it shares with plans. */
    public PlanAnswer asPlan() {
        PlanAnswer.Status status = switch (answer.status()) {
            case FILLED -> PlanAnswer.Status.PLANNED;
            case NOT_POSSIBLE -> PlanAnswer.Status.NO_PLAN;
            case NOT_PROVEN -> PlanAnswer.Status.NOT_PROVEN;
        };
        return new PlanAnswer(
                new Asked(request.kitchen(), List.of(), List.of(), 1, request.budget(), 1, false),
                status,
                answer.proof(),
                answer.plan().map(plan -> new AuditedPlan(plan, audit.orElseThrow())),
                Clashes.NONE,
                Optional.empty(),
                Insight.NONE);
    }

    /** Containers that are left after the fridge days when one is eaten each day. */
    public int beyondFridge() {
        return Math.max(0, request.containers() - request.dish().fridgeDays());
    }

    public List<Notice> notices() {
        return answer.plan()
                .map(plan -> Notice.ofDish(plan.first(), request.dish().freezes() && beyondFridge() > 0))
                .orElse(List.of());
    }

    public Reach reach(Nutrient nutrient) {
        return Reach.of(request, nutrient);
    }
}
