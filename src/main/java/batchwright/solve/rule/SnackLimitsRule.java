package batchwright.solve.rule;

import batchwright.food.Measure;
import batchwright.plan.Seat;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Expression;
import java.util.List;

/**
 * Snacks stay within the eater's measures a day and kinds a day, and within each measure's own most a day. Rows in measures
 * and in kinds.
 */
public record SnackLimitsRule() implements Rule {
    private static final int RANK = 3;

    @Override
    public void addTo(Draft draft) {
        for (Seat seat : draft.request().seats()) {
            var wishes = seat.eater().wishes();
            List<Measure> offered = draft.menu().snacks(seat);
            for (Draft.Span span : draft.spans(seat)) {
                var measures = new Expression();
                offered.forEach(m -> measures.plus(span.snacks(m), 1));
                draft.model()
                        .atMost("snack_measures." + span.name(), measures, wishes.snackMeasuresADay() * span.days());
                if (wishes.snackKindsADay() < Math.min(offered.size(), wishes.snackMeasuresADay())) {
                    draft.model()
                            .atMost(
                                    "snack_kinds." + span.name(),
                                    kinds(draft, span, offered, wishes.snackMeasuresADay()),
                                    wishes.snackKindsADay() * span.days());
                }
            }
        }
    }

    /** Over one day a column counts each kind; over several, each measure counts for its share of the most it may have. */
    private static Expression kinds(Draft draft, Draft.Span span, List<Measure> offered, int measuresADay) {
        var kinds = new Expression();
        for (Measure measure : offered) {
            double most = Math.min(measure.snackMost(), measuresADay);
            if (span.days() > 1) {
                kinds.plus(span.snacks(measure), 1 / most);
                continue;
            }
            String name = measure.food().id() + "." + measure.name() + "." + span.name();
            Column kind = draft.model().column("snack_kind." + name, 0, 1, true, RANK);
            draft.model()
                    .atMost(
                            "snack_if_kind." + name,
                            new Expression().plus(span.snacks(measure), 1).plus(kind, -most),
                            0);
            kinds.plus(kind, 1);
        }
        return kinds;
    }
}
