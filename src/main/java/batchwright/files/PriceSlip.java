package batchwright.files;

import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.stream.Stream;

/** The slips that make a price by weight wrong by a large factor. */
enum PriceSlip {
    CENTS(100, "price"),
    KILOGRAMS(1000, "grams"),
    OUNCES(28.35, "grams"),
    POINT_IN_PRICE(0.01, "price"),
    POINT_IN_GRAMS(0.001, "grams"),
    /** Price and weight in each other's place: what was p / g should have been g / p. */
    SWAPPED(Double.NaN, "grams");

    private static final int MINOR_DIGITS = 2;

    private final double factor;
    private final String column;

    /** @param factor how many times dearer it makes the food; NaN when that depends on weight and price */
    PriceSlip(double factor, String column) {
        this.factor = factor;
        this.column = column;
    }

    /** The one that, undone, comes nearest to the neighbours, counted in times. */
    static PriceSlip likeliest(double times, BigDecimal grams, Money price) {
        return Stream.of(values())
                .min(Comparator.comparingDouble(slip -> Math.abs(Math.log(
                        times / slip.factor(grams.doubleValue(), major(price).doubleValue())))))
                .orElseThrow();
    }

    private double factor(double grams, double price) {
        return this == SWAPPED ? Math.pow(price / grams, 2) : factor;
    }

    /** Where it was made. */
    String column() {
        return column;
    }

    String says(BigDecimal grams, Money money) {
        BigDecimal price = major(money);
        return switch (this) {
            case CENTS -> "is the price in cents? Then it should be " + scaled(price, "0.01", 2);
            case KILOGRAMS -> "is the weight in kg? Then it should be %s g".formatted(scaled(grams, "1000", 0));
            case OUNCES -> "is the weight in ounces? Then it should be %s g".formatted(scaled(grams, "28.35", 0));
            case POINT_IN_PRICE ->
                "is the point in the price two places too far left? Then it should be " + scaled(price, "100", 2);
            case POINT_IN_GRAMS ->
                "is a point missing in the weight? Then it should be %s g".formatted(scaled(grams, "0.001", 1));
            case SWAPPED ->
                "are weight and price in each other's place? Then it should be %s g for %s"
                        .formatted(scaled(price, "1", 0), scaled(grams, "1", 2));
        };
    }

    private static BigDecimal major(Money price) {
        return BigDecimal.valueOf(price.minor(), MINOR_DIGITS);
    }

    private static String scaled(BigDecimal number, String factor, int decimals) {
        return number.multiply(new BigDecimal(factor))
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
