package batchwright.solve;

import batchwright.solve.mip.Stop;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Deals snacks out to like days: so many of each measure in all, every day within its limits and its window of nutrients.
 * Exact: lists every single day that keeps the rules, then looks for days that together use the snacks up.
 */
final class SnackDeal {
    /** Adding or comparing one amount takes as long as looking at this many numbers of a tableau. */
    private static final long WORK_OF_A_LOOK = 3;

    private final int[] total;
    private final int[] mostADay;
    private final double[][] amounts;
    private final double[] least;
    private final double[] most;
    private final int measuresADay;
    private final int kindsADay;
    private final Predicate<int[]> goTogether;
    private final List<int[]> goodDays = new ArrayList<>();
    private final Stop stop;
    private final Set<List<Integer>> hopeless = new HashSet<>();

    /**
     * @param total of each measure over all days
     * @param mostADay of each measure in one day
     * @param amounts for each measure, what one of it holds of each nutrient under rule
     * @param least for each nutrient, what the snacks of one day must hold
     * @param most for each nutrient, what the snacks of one day may hold
     * @param goTogether whether the snacks of one day, counts of each measure, go together
     * @param stop told of all work
     */
    SnackDeal(
            int[] total,
            int[] mostADay,
            double[][] amounts,
            double[] least,
            double[] most,
            int measuresADay,
            int kindsADay,
            Predicate<int[]> goTogether,
            Stop stop) {
        this.goTogether = goTogether;
        this.stop = stop;
        this.total = total;
        this.mostADay = mostADay;
        this.amounts = amounts;
        this.least = least;
        this.most = most;
        this.measuresADay = measuresADay;
        this.kindsADay = kindsADay;
    }

    /** Counts of each measure for each day, or empty when no dealing keeps the rules. */
    Optional<List<int[]>> deal(int days) {
        listGoodDays(new int[total.length], 0, measuresADay, kindsADay, new double[least.length]);
        List<int[]> dealt = new ArrayList<>();
        return dealt(days, total.clone(), 0, dealt) ? Optional.of(dealt) : Optional.empty();
    }

    private void listGoodDays(int[] day, int measure, int measures, int kinds, double[] holds) {
        if (measure == total.length) {
            if (inWindow(holds) && goTogether.test(day)) {
                goodDays.add(day.clone());
            }
            return;
        }
        stop.spend(WORK_OF_A_LOOK * holds.length);
        listGoodDays(day, measure + 1, measures, kinds, holds);
        int limit = kinds == 0 ? 0 : Math.min(Math.min(total[measure], mostADay[measure]), measures);
        for (int count = 1; count <= limit; count++) {
            day[measure] = count;
            double[] more = holds.clone();
            for (int n = 0; n < more.length; n++) {
                more[n] += count * amounts[measure][n];
            }
            listGoodDays(day, measure + 1, measures - count, kinds - 1, more);
        }
        day[measure] = 0;
    }

    private boolean inWindow(double[] holds) {
        for (int n = 0; n < holds.length; n++) {
            if (holds[n] < least[n] || holds[n] > most[n]) {
                return false;
            }
        }
        return true;
    }

    /** Good days in the order they are listed: the order of like days is free. */
    private boolean dealt(int days, int[] left, int from, List<int[]> dealt) {
        if (days == 0) {
            return Arrays.stream(left).allMatch(count -> count == 0);
        }
        List<Integer> state = new ArrayList<>();
        state.add(days);
        state.add(from);
        Arrays.stream(left).forEach(state::add);
        if (hopeless.contains(state) || Arrays.stream(left).sum() > days * measuresADay) {
            return false;
        }
        for (int d = from; d < goodDays.size(); d++) {
            int[] day = goodDays.get(d);
            stop.spend(WORK_OF_A_LOOK * day.length);
            if (fits(day, left)) {
                move(day, left, -1);
                dealt.add(day);
                if (dealt(days - 1, left, d, dealt)) {
                    return true;
                }
                dealt.remove(dealt.size() - 1);
                move(day, left, 1);
            }
        }
        hopeless.add(state);
        return false;
    }

    private static boolean fits(int[] day, int[] left) {
        for (int m = 0; m < day.length; m++) {
            if (day[m] > left[m]) {
                return false;
            }
        }
        return true;
    }

    private static void move(int[] day, int[] left, int sign) {
        for (int m = 0; m < day.length; m++) {
            left[m] += sign * day[m];
        }
    }
}
