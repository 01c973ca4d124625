package batchwright.needs.weighing;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * How much a morning weight differs from the weight behind it, by the person's own weighings. Starts at 0.5 % of weight, at least 0.3
 * and at most 0.8 kg (our choice; Robinson and Watson 1965 imply 0.36-0.38 kg, second-hand; a controlled diet 0.38 % of weight), and
 * moves to what differences between one day and the next say, which an odd weighing does not sway.
 *
 * <p>Weights of days that follow each other are alike; no published figure was found. That a fifth of the variance is water which goes
 * within days is a choice; slow trends then are as uncertain as with a correlation of 0.4 from day to day (0.2-0.5 is plausible).
 *
 * @param sdKg standard deviation s
 */
record WeighingNoise(double sdKg) {
    /** Of the variance, what stays for days. */
    static final double SLOW_SHARE = 0.2;

    private static final double SHARE_OF_WEIGHT = 0.005;
    private static final double LEAST_KG = 0.3;
    private static final double MOST_KG = 0.8;
    /** As many differences as count like what is known before. */
    private static final double PAIRS_LIKE_NONE = 10;
    /** From a median of absolute values to a standard deviation. */
    private static final double OF_NORMAL = 1.4826;

    static WeighingNoise usual(double weightKg) {
        return new WeighingNoise(Math.min(MOST_KG, Math.max(LEAST_KG, SHARE_OF_WEIGHT * weightKg)));
    }

    /** @param days without gaps, at least one of them weighed */
    static WeighingNoise of(List<WeighedDay> days) {
        double[] weights =
                days.stream().flatMapToDouble(day -> day.weightKg().stream()).toArray();
        double usual = usual(new Median().evaluate(weights)).sdKg();
        double[] changes = IntStream.range(1, days.size())
                .filter(i -> counts(days.get(i - 1)) && counts(days.get(i)))
                .mapToDouble(i -> Math.abs(days.get(i).weightKg().orElseThrow()
                        - days.get(i - 1).weightKg().orElseThrow()))
                .toArray();
        if (changes.length == 0) {
            return new WeighingNoise(usual);
        }
        double own =
                OF_NORMAL * new Median().evaluate(changes) / Math.sqrt(2 * (1 - SLOW_SHARE * WeightModel.WATER_STAYS));
        double variance =
                (PAIRS_LIKE_NONE * usual * usual + changes.length * own * own) / (PAIRS_LIKE_NONE + changes.length);
        return new WeighingNoise(Math.sqrt(variance));
    }

    private static boolean counts(WeighedDay day) {
        return day.weightKg().isPresent() && !day.hidesWeight();
    }

    double variance() {
        return sdKg * sdKg;
    }
}
