package batchwright.solve.snack;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToLongFunction;

/**
 * The least of something (rank, cost, energy) that pieces still to be chosen must add to cover what is left of one
 * demand. A lower bound: the other demands and limits are forgotten, except for the number of kinds.
 *
 * <p>Filled from the last piece to the first: the rest from piece i on either leaves i out, or takes 1..most of it and
 * goes on from i + 1 with one kind less and less to cover (a bounded covering knapsack).
 */
final class LeastTable {
    /** More than any least: what is left cannot be covered at all. Sums with it stay below the largest long. */
    static final long NEVER = 1L << 61;

    private static final long MOST_NUMBERS = 1_000_000;

    private final Demand demand;
    private final boolean kindsCount;
    private final int layers;
    private final int width;
    private final long[] least;

    LeastTable(List<Piece> pieces, Demand demand, ToLongFunction<Piece> price, int kindsMost) {
        this.demand = demand;
        kindsCount = kindsMost < pieces.size();
        layers = kindsCount ? kindsMost + 1 : 1;
        width = demand.steps() + 1;
        least = new long[(pieces.size() + 1) * layers * width];
        for (int layer = 0; layer < layers; layer++) {
            int row = row(pieces.size(), layer);
            Arrays.fill(least, row + 1, row + width, NEVER);
        }
        for (int i = pieces.size() - 1; i >= 0; i--) {
            for (int layer = 0; layer < layers; layer++) {
                fill(i, layer, pieces.get(i), price.applyAsLong(pieces.get(i)));
            }
        }
    }

    private void fill(int item, int layer, Piece piece, long price) {
        int row = row(item, layer);
        System.arraycopy(least, row(item + 1, layer), least, row, width);
        if (kindsCount && layer == 0) {
            return;
        }
        int rest = row(item + 1, kindsCount ? layer - 1 : 0);
        int covers = demand.steps(piece.energy(), piece.protein());
        for (int count = 1; count <= piece.most(); count++) {
            long covered = (long) count * covers;
            for (int left = 0; left < width; left++) {
                long total = count * price + least[rest + (int) Math.max(0, left - covered)];
                if (total < least[row + left]) {
                    least[row + left] = total;
                }
            }
        }
    }

    private int row(int item, int layer) {
        return (item * layers + layer) * width;
    }

    /**
     * The least that pieces from this one on, of at most so many kinds, add to cover what is left; {@link #NEVER} or
     * nearly so when they cannot.
     */
    long least(int from, int kindsLeft, long energyLeft, long proteinLeft) {
        return least[row(from, kindsCount ? kindsLeft : 0) + demand.steps(energyLeft, proteinLeft)];
    }

    /**
     * Steps a demand may have, so that a table holds at most about a million numbers (8 MB), and no more than there are
     * snacks to try: a finer table would take longer than trying them all.
     */
    static int mostSteps(List<Piece> pieces, int kindsMost) {
        long rows = (pieces.size() + 1L) * (kindsMost < pieces.size() ? kindsMost + 1L : 1L);
        long snacks = 1;
        for (Piece piece : pieces) {
            snacks = Math.min(MOST_NUMBERS, snacks * (piece.most() + 1L));
        }
        return (int) Math.max(8, snacks / rows);
    }
}
