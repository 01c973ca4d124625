package batchwright.answer;

import batchwright.audit.AuditReport;
import batchwright.plan.Plan;

/**
 * A plan that has passed its audit.
 *
 * @param audit what was checked
 */
public record AuditedPlan(Plan plan, AuditReport audit) {
    /** One cooking session of it, the first being 1. */
    AuditedPlan session(int number) {
        return new AuditedPlan(Plan.of(plan.sessions().get(number - 1)), audit.session(number));
    }
}
