package batchwright.explain;

import batchwright.person.DayTarget;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.IntFunction;

/** Dials for what lies between a least and a most: widened by whole units at one end or at both. */
final class BandDials {
    /** What to try where no file and no option changes the rule. */
    static final String FIXED =
            "this rule is fixed; try wider ranges of parts in foods/dishes, another dish or other snacks";

    /** A profile may ask for no wider band than this [% of the aim]. */
    private static final int WIDEST_ENERGY_BAND_PERCENT = 15;

    /** More kcal or grams than any day holds, yet small enough to count with. */
    private static final int NO_LIMIT = 50_000;

    private static final BigDecimal PER_CENT = BigDecimal.valueOf(100);

    /** The target with a band set. */
    private interface Setter {
        DayTarget to(DayTarget target, int least, int most);
    }

    private record Band(AtTable at, int least, int most, String unit, Setter set) {
        Knob widened(int reach, int below, int above, IntFunction<String> tryThis) {
            return new Knob(
                    Math.max(0, reach),
                    (request, units) ->
                            at.withTarget(request, t -> set.to(t, down(units * below), most + units * above)),
                    units -> "widen it to " + down(units * below) + " to " + (most + units * above) + " " + unit,
                    tryThis);
        }

        private int down(int by) {
            return Math.max(0, least - by);
        }

        Dial dial(String rule, String says, List<List<Knob>> knobs) {
            return new Dial(rule, says, request -> at.withTarget(request, t -> set.to(t, 0, NO_LIMIT)), knobs);
        }

        /** One end if that does, else both. */
        List<List<Knob>> eitherEnd() {
            return List.of(
                    List.of(widened(least, 1, 0, units -> FIXED), widened(NO_LIMIT - most, 0, 1, units -> FIXED)),
                    List.of(widened(NO_LIMIT - most, 1, 1, units -> FIXED)));
        }
    }

    private BandDials() {}

    /** The band stays as even around its aim as it is, and no wider than a profile may ask for. */
    static Dial energy(AtTable at) {
        DayTarget t = at.target();
        var band = new Band(at, t.energyLeastKcal(), t.energyMostKcal(), "kcal", DayTarget::withEnergy);
        int reach = energyReach(t);
        return band.dial(
                "energy band",
                "each day of " + at.name() + " holds " + band.least() + " to " + band.most() + " kcal",
                List.of(List.of(band.widened(
                        reach,
                        1,
                        1,
                        units -> "energy_band: " + percent(t, units) + " % under target, in " + at.file()))));
    }

    /** By how much a profile may ask for a wider energy band at each end [kcal]; negative when it is as wide already. */
    static int energyReach(DayTarget t) {
        return t.energyAimKcal() * WIDEST_ENERGY_BAND_PERCENT / 100 - halfBand(t);
    }

    static Dial fat(AtTable at) {
        DayTarget t = at.target();
        var band = new Band(at, t.fatLeastG(), t.fatMostG(), "g", DayTarget::withFat);
        return band.dial(
                "fat band",
                "each day of " + at.name() + " holds " + band.least() + " to " + band.most() + " g of fat",
                band.eitherEnd());
    }

    static Dial containerShare(AtTable at) {
        DayTarget t = at.target();
        var band = new Band(
                at,
                t.containerLeastKcal(),
                t.containerMostKcal(),
                "kcal",
                (target, least, most) -> target.withContainer(least, most, target.containerProteinLeastG()));
        return band.dial(
                "container share",
                "each container of " + at.name() + " holds " + band.least() + " to " + band.most() + " kcal",
                band.eitherEnd());
    }

    private static int halfBand(DayTarget t) {
        return Math.max(t.energyAimKcal() - t.energyLeastKcal(), t.energyMostKcal() - t.energyAimKcal());
    }

    /** The share of the aim, rounded up to two decimals, that makes a band at least so wide. */
    private static String percent(DayTarget t, int units) {
        return BigDecimal.valueOf(halfBand(t) + (long) units)
                .multiply(PER_CENT)
                .divide(BigDecimal.valueOf(Math.max(1, t.energyAimKcal())), 2, RoundingMode.CEILING)
                .stripTrailingZeros()
                .toPlainString();
    }
}
