package batchwright.limit;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Where an eater's profile changes a limit, and how its figure is written there. */
public sealed interface Setting {
    /** Under target. */
    String key();

    /** As far as a profile may loosen the limit, or should be told to. */
    Range widest();

    /** What stands after the key to make this the limit. */
    String written(Range range);

    /** Whether both ends move together, because the profile says how far from an aim. */
    default boolean movesBothEnds() {
        return false;
    }

    /**
     * A least and a most, or one of them.
     *
     * @param highest the most that a profile may ask for
     */
    record Between(String key, String unit, int highest) implements Setting {
        @Override
        public Range widest() {
            return Range.atMost(highest);
        }

        /** At least 60 kcal per 100 g; 60 to 160 kcal per 100 g. */
        @Override
        public String written(Range range) {
            return range.says(unit);
        }
    }

    /** The figure itself. */
    record Amount(String key, String unit) implements Setting {
        @Override
        public Range widest() {
            return Range.ANY;
        }

        @Override
        public String written(Range range) {
            return (range.hasLeast() ? range.least() : range.most().orElse(0)) + " " + unit;
        }
    }

    /**
     * A most, as it is.
     *
     * @param highest the most that a profile may ask for
     */
    record AtMost(String key, String unit, int highest) implements Setting {
        @Override
        public Range widest() {
            return Range.atMost(highest);
        }

        @Override
        public String written(Range range) {
            return range.most().orElse(highest) + " " + unit;
        }
    }

    /**
     * Grams per kg of body weight.
     *
     * @param kg body weight
     * @param lowest no change asks for less than this [g a day]
     */
    record PerKg(String key, double kg, int lowest) implements Setting {
        private static final int MOST_DECIMALS = 3;

        @Override
        public Range widest() {
            return Range.atLeast(lowest);
        }

        /** With as few decimals as will do to come to so many grams once it is rounded up again. */
        @Override
        public String written(Range range) {
            return figure(range.least()) + " g per kg";
        }

        private String figure(int grams) {
            BigDecimal exact = BigDecimal.valueOf(grams / kg);
            for (int decimals = 1; decimals < MOST_DECIMALS; decimals++) {
                BigDecimal rounded = exact.setScale(decimals, RoundingMode.FLOOR);
                if (Math.ceil(rounded.doubleValue() * kg) == grams) {
                    return rounded.toPlainString();
                }
            }
            return exact.setScale(MOST_DECIMALS, RoundingMode.FLOOR).toPlainString();
        }
    }

    /**
     * How far from the aim, in per cent of it.
     *
     * @param mostPercent the most that a profile may ask for
     */
    record PercentOfAim(String key, int aim, int mostPercent) implements Setting {
        private static final BigDecimal PER_CENT = BigDecimal.valueOf(100);

        @Override
        public boolean movesBothEnds() {
            return true;
        }

        @Override
        public Range widest() {
            int reach = aim * mostPercent / PER_CENT.intValue();
            return Range.between(aim - reach, aim + reach);
        }

        /** Rounded up to two decimals. */
        @Override
        public String written(Range range) {
            int below = range.hasLeast() ? aim - range.least() : 0;
            int above = range.most().orElse(aim) - aim;
            return BigDecimal.valueOf(Math.max(below, above))
                            .multiply(PER_CENT)
                            .divide(BigDecimal.valueOf(Math.max(1, aim)), 2, RoundingMode.CEILING)
                            .stripTrailingZeros()
                            .toPlainString()
                    + " %";
        }
    }
}
