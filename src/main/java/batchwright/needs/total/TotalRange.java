package batchwright.needs.total;

import batchwright.quantity.Energy;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Where the total energy of 8 people in 10 of this description lies, one in ten below and one in ten above. Total = resting energy x PAL;
 * resting energy is taken as normal about its equation, PAL as {@link PalEvidence} says, both as independent. The distribution of the product
 * is added up over the PAL (midpoint rule in probability) and solved for its ends.
 */
public record TotalRange(Energy least, Energy most) {
    /** Share of people who lie inside. */
    public static final double COVERAGE = 0.8;

    private static final int STEPS = 40;
    private static final int MOST_TRIES = 200;
    private static final double EXACT_KCAL = 0.01;
    private static final double FARTHEST = 8; // times the total
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    /**
     * @param resting energy a day by the equation in use
     * @param restingSd standard deviation of one person's resting energy about it [kcal/d]
     */
    public static TotalRange of(Energy resting, double restingSd, PalEvidence evidence) {
        double[] pals = IntStream.range(0, STEPS)
                .mapToDouble(step -> evidence.quantile((step + 0.5) / STEPS))
                .toArray();
        DoubleUnaryOperator shareBelow = kcal -> DoubleStream.of(pals)
                .map(pal -> NORMAL.cumulativeProbability((kcal / pal - resting.kcal()) / restingSd))
                .average()
                .orElseThrow();
        double total = resting.kcal() * evidence.pal();
        double outside = (1 - COVERAGE) / 2;
        return new TotalRange(
                new Energy(Math.min(total, end(shareBelow, outside, total))),
                new Energy(Math.max(total, end(shareBelow, 1 - outside, total))));
    }

    private static double end(DoubleUnaryOperator shareBelow, double share, double total) {
        return new BrentSolver(EXACT_KCAL)
                .solve(MOST_TRIES, kcal -> shareBelow.applyAsDouble(kcal) - share, 0, FARTHEST * total);
    }
}
