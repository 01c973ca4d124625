package batchwright.answer;

import batchwright.audit.AuditReport;
import batchwright.plan.Plan;
import batchwright.schedule.Schedule;
import java.util.List;

/**
 * A plan that has passed its audit.
 *
 * @param audit what was checked
 * @param schedules the order of work of each cooking session, worked out once for everything that shows it
 */
public record AuditedPlan(Plan plan, AuditReport audit, List<Schedule> schedules) {
    public AuditedPlan {
        schedules = List.copyOf(schedules);
    }

    public AuditedPlan(Plan plan, AuditReport audit) {
        this(
                plan,
                audit,
                plan.sessions().stream()
                        .map(session ->
                                Schedule.of(session.batches(), session.kitchen().equipment()))
                        .toList());
    }

    /** One cooking session of it, the first being 1. */
    AuditedPlan session(int number) {
        return new AuditedPlan(
                Plan.of(plan.sessions().get(number - 1)), audit.session(number), List.of(schedules.get(number - 1)));
    }
}
