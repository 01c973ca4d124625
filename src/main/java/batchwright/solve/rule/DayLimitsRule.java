package batchwright.solve.rule;

import batchwright.limit.Limit;
import batchwright.limit.Range;
import batchwright.limit.Scope;
import batchwright.plan.Seat;

/** Each day of each eater keeps the limits of days. One row for each limit and span, in the limit's unit. */
public record DayLimitsRule() implements Rule {
    @Override
    public void addTo(Draft draft) {
        EachLimit.of(draft.request().seats(), Scope.DAY, (seat, limit) -> add(draft, seat, limit));
    }

    private static void add(Draft draft, Seat seat, Limit limit) {
        Range range = limit.range();
        for (Draft.Span span : draft.spans(seat)) {
            draft.model()
                    .row(
                            limit.id() + "." + span.name(),
                            span.intake(limit.measured()),
                            (double) range.least() * span.days(),
                            range.mostOrInfinity() * span.days());
        }
    }
}
