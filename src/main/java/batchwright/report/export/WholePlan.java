package batchwright.report.export;

import batchwright.answer.PlanAnswer;
import batchwright.plan.Plan;
import batchwright.plan.Session;
import batchwright.quantity.Currency;
import batchwright.report.cooking.Work;
import batchwright.report.print.Show;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A plan that was found.
 *
 * @param whole what it answers
 */
public record WholePlan(PlanAnswer whole, Plan plan) {
    /** Empty when there is no plan. */
    public static Optional<WholePlan> of(PlanAnswer answer) {
        return answer.plan().map(plan -> new WholePlan(answer, plan));
    }

    /** The sessions that one shopping trip is for. */
    List<List<Session>> trips() {
        return whole.asked().shopOnce()
                ? List.of(plan.sessions())
                : plan.sessions().stream().map(List::of).toList();
    }

    /** The day by which the things for a session are bought: the one before where something is done the evening before. */
    LocalDate shops(Session session) {
        Session first = whole.asked().shopOnce() ? plan.first() : session;
        boolean soaks = first.batches().stream()
                .anyMatch(batch -> !Work.dayBefore(batch).isEmpty());
        return first.cookingDay().minusDays(soaks ? 1 : 0);
    }

    LocalDate firstDay() {
        return plan.first().cookingDay();
    }

    Currency currency() {
        return whole.kitchen().currency();
    }

    /** 5 days for Lifter, gaining. */
    public String forWhom() {
        return Show.count(whole.days(), "day", "days") + " for "
                + whole.needs().stream().map(n -> n.eater().name()).collect(Collectors.joining(" and "));
    }
}
