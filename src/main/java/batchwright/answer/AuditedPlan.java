package batchwright.answer;

import batchwright.audit.AuditReport;
import batchwright.plan.Plan;
import batchwright.plan.Session;
import batchwright.schedule.Schedule;
import java.util.ArrayList;
import java.util.List;

/** A plan that has passed its audit. */
public final class AuditedPlan {
    private final Plan plan;
    private final AuditReport audit;
    private final List<Schedule> schedules = new ArrayList<>();

    /** @param audit what was checked */
    public AuditedPlan(Plan plan, AuditReport audit) {
        this(plan, audit, List.of());
    }

    private AuditedPlan(Plan plan, AuditReport audit, List<Schedule> known) {
        this.plan = plan;
        this.audit = audit;
        schedules.addAll(known);
    }

    public Plan plan() {
        return plan;
    }

    public AuditReport audit() {
        return audit;
    }

    /** The order of work of each cooking session, worked out when it is first asked for, once for everything that shows it. */
    public synchronized List<Schedule> schedules() {
        for (int known = schedules.size(); known < plan.sessions().size(); known++) {
            Session session = plan.sessions().get(known);
            schedules.add(Schedule.of(session.batches(), session.kitchen().equipment()));
        }
        return List.copyOf(schedules);
    }

    /** One cooking session of it, the first being 1. */
    AuditedPlan session(int number) {
        return new AuditedPlan(
                Plan.of(plan.sessions().get(number - 1)),
                audit.session(number),
                List.of(schedules().get(number - 1)));
    }
}
