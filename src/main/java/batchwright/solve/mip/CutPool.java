package batchwright.solve.mip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** The cuts that strengthen a model now: it takes the deepest of those found in a round, and drops those that have become idle. */
final class CutPool {
    static final int MOST_A_ROUND = 25;

    /** Cuts that are nearly parallel to one already taken add a row and hardly a bound. */
    static final double PARALLEL = 0.9;

    private final Stop stop;
    private List<Cut> cuts = List.of();

    /** @param stop told of all work */
    CutPool(Stop stop) {
        this.stop = stop;
    }

    /** In the order of their rows. */
    List<Cut> cuts() {
        return cuts;
    }

    /** @param idle whether the cut of this number holds nothing back in the optimum */
    void dropIdle(IntPredicate idle) {
        cuts = IntStream.range(0, cuts.size())
                .filter(idle.negate())
                .mapToObj(cuts::get)
                .toList();
    }

    /**
     * Takes the cuts that lie deepest, none nearly parallel to another.
     *
     * @param found most {@value #MOST_A_ROUND} of them are taken
     * @param x the point that they cut off
     * @return whether any was taken
     */
    boolean takeDeepest(List<Cut> found, double[] x) {
        List<Cut> taken = new ArrayList<>(cuts);
        int most = taken.size() + MOST_A_ROUND;
        List<Cut> deepestFirst = found.stream()
                .sorted(Comparator.comparingDouble((Cut cut) -> -cut.depth(x)))
                .toList();
        for (Cut cut : deepestFirst) {
            stop.spend((long) taken.size() * x.length);
            if (taken.size() < most && taken.stream().noneMatch(c -> c.parallel(cut) > PARALLEL)) {
                taken.add(cut);
            }
        }
        boolean any = taken.size() > cuts.size();
        cuts = List.copyOf(taken);
        return any;
    }
}
