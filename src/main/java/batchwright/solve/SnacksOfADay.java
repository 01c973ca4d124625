package batchwright.solve;

import batchwright.food.Measure;
import batchwright.person.Wishes;
import batchwright.solve.rule.SnackPairsRule;
import java.util.Collection;
import java.util.List;

/** Whether the snacks of one day go together, by their counts. */
final class SnacksOfADay {
    private final List<Measure> measures;
    private final boolean any;
    private final int carriedAnyway;
    private final Collection<List<Measure>> alike;

    /** @param measures in the order of the counts */
    SnacksOfADay(List<Measure> measures, Wishes wishes) {
        this.measures = measures;
        this.any = wishes.meals().anySnacks();
        this.carriedAnyway = SnackPairsRule.carriedAnyway(wishes);
        this.alike = SnackPairsRule.alike(measures).values();
    }

    boolean goTogether(int[] counts) {
        return any || (spreadsAreCarried(counts) && alike.stream().allMatch(kind -> different(kind, counts) <= 1));
    }

    private boolean spreadsAreCarried(int[] counts) {
        int bare = -carriedAnyway;
        for (int m = 0; m < counts.length; m++) {
            Measure measure = measures.get(m);
            bare += measure.isSpread() ? counts[m] : 0;
            bare -= measure.isCarrier() ? counts[m] * Measure.SPREADS_ON_A_CARRIER : 0;
        }
        return bare <= 0;
    }

    private int different(List<Measure> kind, int[] counts) {
        int different = 0;
        for (int m = 0; m < counts.length; m++) {
            different += counts[m] > 0 && kind.contains(measures.get(m)) ? 1 : 0;
        }
        return different;
    }
}
