package batchwright.needs.weighing;

import batchwright.needs.weighing.kalman.Belief;
import batchwright.needs.weighing.kalman.Motion;
import batchwright.needs.weighing.kalman.Reading;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * How weight follows from intake, day by day, as a linear state with four figures:
 *
 * <pre>
 * W  tissue [kg]                          W' = W + (EI + s z - M) / dynamic + w
 * M  intake that holds the weight [kcal]  M' = M + upkeep (EI + s z - M) / dynamic + u
 * G  water that comes and goes [kg]       G' = d G + k (1-d) (EI - EI0) + g,  d = exp(-1 day / 4 days)
 * z  how the record errs all along        z' = z ~ N(0, 1)
 * seen weight = W + G + e
 * </pre>
 *
 * <p>W and M are the model of {@link batchwright.needs.dynamics.HallChow2011}, so that M moves with weight and a changed intake is not
 * taken for a changed person; EI is the recorded intake, s what the record may be wrong by [kcal]. EI0 is what held the weight before.
 *
 * <p>The sizes below are choices, each with its reason beside it; within what the reasons leave open some were moved until the
 * bands held for simulated people what they promise.
 */
final class WeightModel {
    static final int WEIGHT = 0;
    static final int HOLDS = 1;
    static final int WATER = 2;
    static final int RECORD = 3;
    private static final int FIGURES = 4;

    /** What M gains or loses in a day, by habits and seasons [kcal]; our choice, 10-20 is usual. */
    private static final double DRIFT_KCAL = 10;
    /** What a day's expenditure and a complete record are off by, by chance, as a share of intake; our choice. */
    private static final double DAY_SHARE = 0.08;
    /** The same when the day is not logged: intake of one person varies by 20-25 % from day to day (from memory). */
    private static final double UNLOGGED_SHARE = 0.30;
    /** All along: food tables and scales (our choice), and what is not weighed out (records are 12-20 % short: OPEN, CALERIE). */
    private static final double PLANNED_SHARE = 0.03;

    private static final double UNPLANNED_SHARE = 0.20;
    /** Whether more or less is eaten when nothing is logged; our choice. */
    private static final double UNLOGGED_ALL_ALONG_SHARE = 0.10;
    /** Water per intake: 500 kcal less hold 0.5 kg less. Glycogen 0.5 kg with 2.7 g of water a gram, and salt; the model of Hall 2011. */
    private static final double WATER_KG_PER_KCAL = 0.001;

    /** What that differs by between people, as a share; our choice. */
    private static final double WATER_DOUBT = 0.5;

    /** What is left of it the next day: 4 days. */
    static final double WATER_STAYS = Math.exp(-1 / 4.0);
    /** What the diet before the first day is unknown by [kcal]. */
    private static final double BEFORE_KCAL = 300;

    private static final double FIRST_WEIGHT_SD_KG = 10; // that is, not known

    private final Prior prior;
    private final WeighingNoise noise;

    WeightModel(Prior prior, WeighingNoise noise) {
        this.prior = prior;
        this.noise = noise;
    }

    Belief first(double weightKg) {
        double water = WATER_KG_PER_KCAL * BEFORE_KCAL;
        return new Belief(vector(weightKg, prior.kcal(), 0, 0), MatrixUtils.createRealDiagonalMatrix(new double[] {
            FIRST_WEIGHT_SD_KG * FIRST_WEIGHT_SD_KG,
            prior.sdKcal() * prior.sdKcal(),
            water * water + WeighingNoise.SLOW_SHARE * noise.variance(),
            1
        }));
    }

    /**
     * Through a day.
     *
     * @param likelyKcal what is eaten on a day that is not logged
     * @param oddKcal how far that day's expenditure may be off, besides
     */
    Motion through(DayIntake intake, double likelyKcal, double oddKcal) {
        double kcal = intake.complete() ? intake.kcal() : Math.max(intake.kcal(), likelyKcal);
        double byChance = (intake.complete() ? DAY_SHARE : UNLOGGED_SHARE) * kcal;
        double allAlong = allAlongKcal(intake, likelyKcal);
        double perKcal = 1 / prior.body().dynamicKcalPerKg();
        double upkeep = prior.body().upkeepKcalPerKg();
        double water = WATER_KG_PER_KCAL * (1 - WATER_STAYS) * (kcal - prior.kcal());

        RealMatrix transition = MatrixUtils.createRealIdentityMatrix(FIGURES);
        transition.setEntry(WEIGHT, HOLDS, -perKcal);
        transition.setEntry(WEIGHT, RECORD, allAlong * perKcal);
        transition.setEntry(HOLDS, HOLDS, 1 - upkeep * perKcal);
        transition.setEntry(HOLDS, RECORD, upkeep * allAlong * perKcal);
        transition.setEntry(WATER, WATER, WATER_STAYS);
        RealVector moved = vector(kcal * perKcal, upkeep * kcal * perKcal, water, 0);

        double tissue = Math.hypot(byChance, oddKcal) * perKcal;
        double slow = WeighingNoise.SLOW_SHARE * noise.variance() * (1 - WATER_STAYS * WATER_STAYS);
        RealMatrix doubt = MatrixUtils.createRealDiagonalMatrix(new double[] {
            tissue * tissue, DRIFT_KCAL * DRIFT_KCAL, slow + WATER_DOUBT * WATER_DOUBT * water * water, 0
        });
        return new Motion(transition, moved, doubt);
    }

    /** What a day's record may be wrong by in the same way as all others: s [kcal]. */
    static double allAlongKcal(DayIntake intake, double likelyKcal) {
        return intake.complete()
                ? Math.hypot(PLANNED_SHARE * intake.plannedKcal(), UNPLANNED_SHARE * intake.unplannedKcal())
                : UNLOGGED_ALL_ALONG_SHARE * Math.max(intake.kcal(), likelyKcal);
    }

    /** What is burnt: intake times one share, and what holds the weight times the rest. */
    static KcalBand burnt(Belief belief, double share, double intake, double allAlongKcal) {
        RealVector loading = vector(0, 1 - share, 0, share * allAlongKcal);
        return new KcalBand(
                share * intake + loading.dotProduct(belief.mean()),
                Math.sqrt(Math.max(0, loading.dotProduct(belief.covariance().operate(loading)))));
    }

    /** @param moreSdKg how much less this weight says than others */
    Reading seen(double weightKg, double moreSdKg) {
        return new Reading(
                vector(1, 0, 1, 0), weightKg, (1 - WeighingNoise.SLOW_SHARE) * noise.variance() + moreSdKg * moreSdKg);
    }

    /** Weight as a scale without noise would show it [kg]. */
    static double seenKg(Belief belief) {
        return belief.mean(WEIGHT) + belief.mean(WATER);
    }

    /** Its standard deviation [kg]. */
    static double seenSdKg(Belief belief) {
        RealVector loading = vector(1, 0, 1, 0);
        return Math.sqrt(Math.max(0, loading.dotProduct(belief.covariance().operate(loading))));
    }

    /** Water that arrives over the next days, or leaves, and stays so. */
    static Belief withWater(Belief belief, double kg, double sdKg) {
        RealVector way = vector(1, 0, -1, 0);
        return belief.plus(way.mapMultiply(kg), way.outerProduct(way).scalarMultiply(sdKg * sdKg));
    }

    /** Water that may be there now and will leave again. */
    static Belief withPassingWater(Belief belief, double sdKg) {
        return doubted(belief, vector(0, 0, sdKg, 0));
    }

    /** The weight may be another one. */
    static Belief moved(Belief belief, double sdKg) {
        return doubted(belief, vector(sdKg, 0, 0, 0));
    }

    private static Belief doubted(Belief belief, RealVector sds) {
        return belief.plus(sds.mapMultiply(0), sds.outerProduct(sds));
    }

    private static RealVector vector(double... figures) {
        return new ArrayRealVector(figures);
    }
}
