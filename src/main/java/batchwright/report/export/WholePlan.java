package batchwright.report.export;

import batchwright.answer.PlanAnswer;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.cooking.Work;
import batchwright.report.plan.SessionsAnswer;
import batchwright.report.print.Show;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A plan that was found, of one cooking session or of several: for files that treat both alike.
 *
 * @param whole eaters, days and budget of all sessions together
 * @param sessions at least one
 * @param shopOnce whether everything is bought before the first session
 */
public record WholePlan(PlanAnswer whole, List<SessionsAnswer.One> sessions, boolean shopOnce) {
    public WholePlan {
        sessions = List.copyOf(sessions);
    }

    /** Empty when there is no plan. */
    public static Optional<WholePlan> of(PlanAnswer answer) {
        return answer.plan().map(plan -> new WholePlan(answer, List.of(new SessionsAnswer.One(1, answer)), false));
    }

    /** Empty when there is no plan. */
    public static Optional<WholePlan> of(SessionsAnswer answer) {
        return answer.sessions().isEmpty()
                ? Optional.empty()
                : Optional.of(new WholePlan(answer.whole(), answer.sessions(), answer.shopOnce()));
    }

    /** The day on which a session cooks. */
    static LocalDate cooks(SessionsAnswer.One session) {
        return session.answer().kitchen().cookingDay();
    }

    /** The day by which the things for a session are bought: the one before where something is done the evening before. */
    LocalDate shops(SessionsAnswer.One session) {
        SessionsAnswer.One first = shopOnce ? sessions.get(0) : session;
        boolean soaks = first.plan().batches().stream()
                .anyMatch(batch -> !Work.of(batch).dayBefore().isEmpty());
        return cooks(first).minusDays(soaks ? 1 : 0);
    }

    LocalDate firstDay() {
        return cooks(sessions.get(0));
    }

    Currency currency() {
        return whole.kitchen().currency();
    }

    Money cost() {
        return cost(sessions);
    }

    static Money cost(List<SessionsAnswer.One> sessions) {
        return sessions.stream().map(s -> s.plan().cost()).reduce(Money.ZERO, Money::plus);
    }

    /** 5 days for Lifter, gaining. */
    public String forWhom() {
        return Show.count(whole.days(), "day", "days") + " for "
                + whole.needs().stream().map(n -> n.eater().name()).collect(Collectors.joining(" and "));
    }
}
