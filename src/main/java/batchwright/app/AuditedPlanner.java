package batchwright.app;

import batchwright.audit.Audit;
import batchwright.audit.AuditReport;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Watch;
import java.util.List;
import java.util.Optional;

/**
 * Answers with the best of a planner's plans that passes the audit, so that a fault in one costs nobody the others. What was wrong is
 * told to the watch. Where none passes, the planner's answer stays as it is.
 */
record AuditedPlanner(Planner planner) implements Planner {
    @Override
    public PlanResult plan(PlanRequest request) {
        return plan(request, Watch.NONE);
    }

    @Override
    public PlanResult plan(PlanRequest request, Watch watch) {
        PlanResult result = planner.plan(request, watch);
        List<Plan> plans = result.plans();
        Optional<AuditReport> faults =
                result.best().map(best -> Audit.of(request, best)).filter(report -> !report.passed());
        if (faults.isEmpty()) {
            return result;
        }
        watch.wrong(faults.get().failures());
        return plans.stream()
                .skip(1)
                .filter(plan -> Audit.of(request, plan).passed())
                .findFirst()
                .map(AuditedPlanner::result)
                .orElse(result);
    }

    /** What was proven holds, but for another plan. */
    private static PlanResult result(Plan plan) {
        return plan.proof().provenCheapest()
                ? new PlanResult.Planned(plan)
                : new PlanResult.GaveUp(Optional.of(plan), plan.proof());
    }

    @Override
    public Possible possible(PlanRequest request) {
        return planner.possible(request);
    }

    @Override
    public Possible possible(PlanRequest request, Watch watch) {
        return planner.possible(request, watch);
    }
}
