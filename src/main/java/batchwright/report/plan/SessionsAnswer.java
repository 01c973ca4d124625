package batchwright.report.plan;

import batchwright.answer.Notice;
import batchwright.answer.PlanAnswer;
import batchwright.audit.AuditReport;
import batchwright.food.Nutrients;
import batchwright.needs.Needs;
import batchwright.needs.intakes.Intake;
import batchwright.plan.EaterDays;
import batchwright.plan.Plan;
import batchwright.quantity.Money;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * What a request for several cooking sessions came to.
 *
 * @param whole what holds for all days: eaters, budget, status, proof, clashes; without a plan, which is in the sessions
 * @param cooks how many sessions were asked for
 * @param shopOnce whether everything is bought before the first session
 * @param sessions one after another; empty when there is no plan
 * @param audit of all sessions together; there exactly when sessions are
 * @param stuck days for which nothing was found, if that is why there is no plan
 */
public record SessionsAnswer(
        PlanAnswer whole,
        int cooks,
        boolean shopOnce,
        List<One> sessions,
        Optional<AuditReport> audit,
        Optional<Stretch> stuck) {
    /**
     * One session.
     *
     * @param firstDay its cooking day, as a day of the whole
     * @param answer its own days, counted from 1, with its plan
     */
    public record One(int firstDay, PlanAnswer answer) {
        public int lastDay() {
            return firstDay + answer.days() - 1;
        }

        public Plan plan() {
            return answer.plan().orElseThrow();
        }
    }

    /** Days of the whole, from the first to the last. */
    public record Stretch(int first, int last) {
        /** In a sentence, when it is why there is no plan. */
        public String hasNoPlan() {
            return (first == 1
                            ? "It is the session for days "
                            : "After the sessions before it, it is the one for days ")
                    + first + "-" + last + " that has no plan."
                    + (first == 1 ? "" : " Try other --cooks, or without --vary.");
        }
    }

    public SessionsAnswer {
        sessions = List.copyOf(sessions);
    }

    public PlanAnswer.Status status() {
        return whole.status();
    }

    public SessionsAnswer with(List<One> planned, AuditReport checked) {
        return new SessionsAnswer(whole, cooks, shopOnce, planned, Optional.of(checked), stuck);
    }

    public Money cost() {
        return sessions.stream().map(s -> s.plan().cost()).reduce(Money.ZERO, Money::plus);
    }

    /** What an average day of all holds, beside what is published; empty when there is no plan. */
    public List<Intake> intakes(Needs needs) {
        List<EaterDays> days = sessions.stream()
                .flatMap(s -> s.plan().eaters().stream())
                .filter(e -> e.seat().eater().equals(needs.eater()))
                .toList();
        Nutrients sum = Nutrients.NONE;
        for (One session : sessions) {
            for (EaterDays eater : session.plan().eaters()) {
                if (eater.seat().eater().equals(needs.eater())) {
                    for (var day : eater.days()) {
                        sum = sum.plus(session.plan().totals(needs.eater(), day));
                    }
                }
            }
        }
        return days.isEmpty() ? List.of() : Intake.of(needs.references(), sum.dividedBy(whole.days()));
    }

    /** Cautions of all sessions, each once. */
    public List<Notice> notices() {
        if (sessions.isEmpty()) {
            return Notice.of(whole);
        }
        return each(one -> Notice.of(one.answer()));
    }

    /** Short ids of all dishes that are cooked, each once. */
    List<String> dishes() {
        return each(one -> one.plan().batches().stream().map(b -> b.dish().id()).toList());
    }

    private <T> List<T> each(Function<One, List<T>> of) {
        Set<T> all = new LinkedHashSet<>();
        sessions.forEach(one -> all.addAll(of.apply(one)));
        return List.copyOf(all);
    }
}
