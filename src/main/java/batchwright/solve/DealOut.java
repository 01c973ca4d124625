package batchwright.solve;

import batchwright.food.Measure;
import batchwright.limit.Limit;
import batchwright.limit.Scope;
import batchwright.plan.Seat;
import batchwright.plan.Snack;
import batchwright.solve.Layout.LikeDays;
import batchwright.solve.mip.PlainCompletion;
import batchwright.solve.mip.Stop;
import batchwright.solve.rule.Amounts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;

/** Completes a layout whose portions, packs and snack sums are decided: deals the snacks out to the single days. */
final class DealOut {
    /** Snacks that make up exactly what a day lacks must not fail because of rounding. */
    private static final double TOLERANCE = 1e-7;

    private final DaysDraft draft;
    private final PlainCompletion plain;
    private final BiConsumer<Seat, LikeDays> failed;
    private final Stop stop;

    /**
     * @param failed told of the days that snacks could not be dealt out to
     * @param stop told of all work
     */
    DealOut(DaysDraft draft, BiConsumer<Seat, LikeDays> failed, Stop stop) {
        this.stop = stop;
        this.draft = draft;
        this.failed = failed;
        this.plain = new PlainCompletion(draft.model());
    }

    /**
     * The plan that these columns make.
     *
     * @param x column values, whole columns rounded
     */
    Optional<DaysSolution> deal(double[] x) {
        return plain.keepsAll(x) ? snacks(x).map(snacks -> new DaysSolution(draft, x, snacks)) : Optional.empty();
    }

    /** The snacks of each day of each eater; empty when they cannot be dealt out. */
    private Optional<Map<Seat, Map<Integer, List<Snack>>>> snacks(double[] x) {
        Map<Seat, Map<Integer, List<Snack>>> all = new LinkedHashMap<>();
        for (Seat seat : draft.request().seats()) {
            Map<Integer, List<Snack>> days = new LinkedHashMap<>();
            all.put(seat, days);
            for (LikeDays group : draft.groups(seat)) {
                if (!deal(seat, group, x, days)) {
                    failed.accept(seat, group);
                    return Optional.empty();
                }
            }
        }
        return Optional.of(all);
    }

    private boolean deal(Seat seat, LikeDays group, double[] x, Map<Integer, List<Snack>> days) {
        List<Measure> measures = draft.menu().snacks(seat).stream()
                .filter(m -> draft.snackCount(seat, m, group, x) > 0)
                .toList();
        int[] total = measures.stream()
                .mapToInt(m -> draft.snackCount(seat, m, group, x))
                .toArray();
        var wishes = seat.eater().wishes();
        List<Limit> limits = seat.target().limits(Scope.DAY);
        double[] least = new double[limits.size()];
        double[] most = new double[limits.size()];
        double[][] amounts = new double[measures.size()][limits.size()];
        for (int r = 0; r < limits.size(); r++) {
            Limit limit = limits.get(r);
            double base = draft.withoutSnacks(seat, group, limit.measured()).value(x);
            least[r] = limit.range().least() - base - TOLERANCE;
            most[r] = limit.range().mostOrInfinity() - base + TOLERANCE;
            for (int m = 0; m < measures.size(); m++) {
                amounts[m][r] = Amounts.inMeasure(measures.get(m), limit.measured());
            }
        }
        var deal = new SnackDeal(
                total,
                measures.stream().mapToInt(Measure::snackMost).toArray(),
                amounts,
                least,
                most,
                wishes.snackMeasuresADay(),
                wishes.snackKindsADay(),
                new SnacksOfADay(measures, wishes)::goTogether,
                stop);
        Optional<List<int[]>> dealt = deal.deal(group.days().size());
        dealt.ifPresent(list -> {
            for (int d = 0; d < list.size(); d++) {
                days.put(group.days().get(d), snacks(measures, list.get(d)));
            }
        });
        return dealt.isPresent();
    }

    private static List<Snack> snacks(List<Measure> measures, int[] counts) {
        List<Snack> snacks = new ArrayList<>();
        for (int m = 0; m < counts.length; m++) {
            if (counts[m] > 0) {
                snacks.add(new Snack(measures.get(m), counts[m]));
            }
        }
        return snacks;
    }
}
