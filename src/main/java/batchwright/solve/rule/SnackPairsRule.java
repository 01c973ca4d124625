package batchwright.solve.rule;

import batchwright.food.Measure;
import batchwright.person.Wishes;
import batchwright.plan.Seat;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Expression;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A spread is eaten on a carrier, and of snacks that are alike a day has one only. Rows in measures; which of several like days
 * gets which snacks is settled when they are dealt out.
 */
public record SnackPairsRule() implements Rule {
    private static final int RANK = 3;

    @Override
    public void addTo(Draft draft) {
        for (Seat seat : draft.request().seats()) {
            Wishes wishes = seat.eater().wishes();
            if (wishes.meals().anySnacks()) {
                continue;
            }
            List<Measure> offered = draft.menu().snacks(seat);
            for (Draft.Span span : draft.spans(seat)) {
                spreads(draft, span, wishes, offered);
                alike(offered).forEach((kind, measures) -> oneOf(draft, span, kind, measures));
            }
        }
    }

    /** Spreads that what is always eaten can carry on a day. */
    public static int carriedAnyway(Wishes wishes) {
        return Measure.SPREADS_ON_A_CARRIER
                * wishes.always().stream()
                        .filter(always -> always.measure().isCarrier())
                        .mapToInt(Wishes.Always::count)
                        .sum();
    }

    /** Offered snacks of which a day has one only, by kind. */
    public static Map<String, List<Measure>> alike(List<Measure> offered) {
        Map<String, List<Measure>> byKind = new LinkedHashMap<>();
        for (Measure measure : offered) {
            if (measure.isOneOfItsKind()) {
                byKind.computeIfAbsent(
                        measure.snackKind(),
                        k -> offered.stream()
                                .filter(m -> m.snackKind().equals(k))
                                .toList());
            }
        }
        byKind.values().removeIf(measures -> measures.size() < 2);
        return byKind;
    }

    private static void spreads(Draft draft, Draft.Span span, Wishes wishes, List<Measure> offered) {
        if (offered.stream().noneMatch(Measure::isSpread)) {
            return;
        }
        var bare = new Expression();
        offered.stream().filter(Measure::isSpread).forEach(m -> bare.plus(span.snacks(m), 1));
        offered.stream()
                .filter(Measure::isCarrier)
                .forEach(m -> bare.plus(span.snacks(m), -Measure.SPREADS_ON_A_CARRIER));
        draft.model().atMost("snack_spreads." + span.name(), bare, (double) carriedAnyway(wishes) * span.days());
    }

    /** Over one day a column counts each; over several, each counts for its share of the most it may have. */
    private static void oneOf(Draft draft, Draft.Span span, String kind, List<Measure> alike) {
        var different = new Expression();
        for (Measure measure : alike) {
            double most = measure.snackMost();
            if (span.days() > 1) {
                different.plus(span.snacks(measure), 1 / most);
                continue;
            }
            String name = measure.food().id() + "." + measure.name() + "." + span.name();
            Column column = draft.model().column("snack_alike." + name, 0, 1, true, RANK);
            draft.model()
                    .atMost(
                            "snack_if_alike." + name,
                            new Expression().plus(span.snacks(measure), 1).plus(column, -most),
                            0);
            different.plus(column, 1);
        }
        draft.model().atMost("snack_one." + kind + "." + span.name(), different, span.days());
    }
}
