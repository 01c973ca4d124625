package batchwright.solve.rule;

import batchwright.limit.Scope;

/**
 * All days of each eater together keep the limits on their mean. One row for each limit, in its unit: what the days hold together
 * is so many times the mean.
 */
public record MeanLimitsRule() implements Rule {
    @Override
    public void addTo(Draft draft) {
        int days = draft.request().days();
        EachLimit.of(
                draft.request().seats(),
                Scope.MEAN_OF_DAYS,
                (seat, limit) -> draft.model()
                        .row(
                                limit.id() + "." + seat.eater().id(),
                                Amounts.inAllDays(draft, seat, limit.measured()),
                                (double) limit.range().least() * days,
                                limit.range().mostOrInfinity() * days));
    }
}
