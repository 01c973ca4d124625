package batchwright.solve.mip;

/**
 * Which nonbasic variable takes over a line that is outside its bounds: the first whose reduced cost would change its sign. Walks
 * these breakpoints in the order of their ratio and flips boxed variables past theirs as long as the line stays outside (the
 * long-step rule); ties go to the largest pivot.
 */
final class RatioTest {
    private static final double PIVOT = 1e-8;

    private final Tableau tableau;
    private final double[] xN;
    private final double[] lower;
    private final double[] upper;
    private final int[] candidates;
    private final int[] flips;
    private final Stop stop;
    private int count;
    private int flipCount;

    /**
     * @param xN values of the nonbasic variables, as they are when it is asked
     * @param lower bounds of all variables, likewise
     * @param upper bounds of all variables, likewise
     * @param stop told of all work
     */
    RatioTest(Tableau tableau, double[] xN, double[] lower, double[] upper, Stop stop) {
        this.stop = stop;
        this.tableau = tableau;
        this.xN = xN;
        this.lower = lower;
        this.upper = upper;
        this.candidates = new int[xN.length];
        this.flips = new int[xN.length];
    }

    /**
     * The column of the variable that takes over; -1 when none can mend the line. Then nothing is to be flipped.
     *
     * @param rises whether the line's variable has to rise
     * @param missing how far it is outside its bound
     */
    int entering(int line, boolean rises, double missing) {
        stop.spend(xN.length);
        double[] row = tableau.t[line];
        double slope = missing;
        findCandidates(row, rises ? 1 : -1);
        flipCount = 0;
        while (count > 0) {
            stop.spend(3L * count);
            int best = breakpoint(row);
            int k = tableau.nonbasic[best];
            double drop = Math.abs(row[best]) * (upper[k] - lower[k]);
            if (slope - drop <= DualSimplex.HOPELESS * Math.max(1, missing)) {
                return best;
            }
            slope -= drop;
            takeOut(best);
            flips[flipCount++] = best;
        }
        return -1;
    }

    /** How many columns have to be flipped to their other bound before the entering one takes over. */
    int flips() {
        return flipCount;
    }

    int flip(int f) {
        return flips[f];
    }

    /** The nonbasic variables that can move so as to mend the line. */
    private void findCandidates(double[] row, double sign) {
        count = 0;
        for (int j = 0; j < row.length; j++) {
            double alpha = sign * row[j];
            if (alpha > PIVOT
                    ? xN[j] < upper[tableau.nonbasic[j]]
                    : alpha < -PIVOT && xN[j] > lower[tableau.nonbasic[j]]) {
                candidates[count++] = j;
            }
        }
    }

    /** Next breakpoint: the least |d/alpha|, the largest |alpha| among those about as small. */
    private int breakpoint(double[] row) {
        double[] d = tableau.d;
        double least = Double.POSITIVE_INFINITY;
        for (int c = 0; c < count; c++) {
            int j = candidates[c];
            least = Math.min(least, (Math.abs(d[j]) + DualSimplex.DUAL) / Math.abs(row[j]));
        }
        int best = -1;
        double largest = 0;
        for (int c = 0; c < count; c++) {
            int j = candidates[c];
            if (Math.abs(d[j]) / Math.abs(row[j]) <= least && Math.abs(row[j]) > largest) {
                best = j;
                largest = Math.abs(row[j]);
            }
        }
        return best;
    }

    /** The other candidates keep their order, so that ties go the same way. */
    private void takeOut(int candidate) {
        int at = 0;
        for (int c = 0; c < count; c++) {
            if (candidates[c] != candidate) {
                candidates[at++] = candidates[c];
            }
        }
        count = at;
    }
}
