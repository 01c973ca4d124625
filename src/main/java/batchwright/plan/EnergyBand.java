package batchwright.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * How much energy a container must have [kcal].
 *
 * @param leastKcal no less
 * @param aimKcal the nearer to it the better, cost being equal
 * @param mostKcal no more
 * @param percent half the width of the band in per cent of the aim; empty when least and most were asked for instead
 */
public record EnergyBand(BigDecimal leastKcal, BigDecimal aimKcal, BigDecimal mostKcal, Optional<BigDecimal> percent) {
    /** As close as a kitchen scale read to 5 g and whole pieces can be expected to come. */
    public static final BigDecimal USUAL_PERCENT = BigDecimal.valueOf(3);

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    public EnergyBand {
        if (leastKcal.compareTo(aimKcal) > 0 || aimKcal.compareTo(mostKcal) > 0) {
            throw new IllegalArgumentException(
                    "aimKcal (" + aimKcal + ") must be from " + leastKcal + " to " + mostKcal + ".");
        }
    }

    public static EnergyBand around(BigDecimal kcal, BigDecimal percent) {
        BigDecimal off = kcal.multiply(percent).movePointLeft(2);
        return new EnergyBand(kcal.subtract(off), kcal, kcal.add(off), Optional.of(percent));
    }

    /** Aims at the middle. */
    public static EnergyBand between(BigDecimal least, BigDecimal most) {
        return new EnergyBand(least, least.add(most).divide(TWO), most, Optional.empty());
    }

    public boolean holds(BigDecimal kcal) {
        return kcal.compareTo(leastKcal) >= 0 && kcal.compareTo(mostKcal) <= 0;
    }

    /**
     * The nearest band of the same kind that holds so much energy, in whole kcal: as wide around another aim, or widened at one
     * end.
     */
    public EnergyBand reaching(BigDecimal kcal) {
        boolean up = kcal.compareTo(aimKcal) > 0;
        BigDecimal whole = kcal.setScale(0, up ? RoundingMode.CEILING : RoundingMode.FLOOR);
        if (percent.isEmpty()) {
            return up ? between(leastKcal, whole) : between(whole, mostKcal);
        }
        EnergyBand moved = around(kcal.setScale(0, RoundingMode.HALF_UP), percent.get());
        return moved.holds(kcal)
                ? moved
                : between(kcal.setScale(0, RoundingMode.FLOOR), kcal.setScale(0, RoundingMode.CEILING));
    }
}
