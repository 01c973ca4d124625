package batchwright.files;

import batchwright.food.Pack;
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
    POINT_IN_GRAMS(0.001, "grams");

    private final double factor;
    private final String column;

    /** @param factor how many times dearer it makes the food */
    PriceSlip(double factor, String column) {
        this.factor = factor;
        this.column = column;
    }

    /** The one whose factor is nearest, counted in times. */
    static PriceSlip likeliest(double times) {
        return Stream.of(values())
                .min(Comparator.comparingDouble(slip -> Math.abs(Math.log(times / slip.factor))))
                .orElseThrow();
    }

    /** Where it was made. */
    String column() {
        return column;
    }

    String says(Pack pack) {
        BigDecimal price = BigDecimal.valueOf(pack.price().minor(), 2);
        BigDecimal grams = pack.grams();
        return switch (this) {
            case CENTS -> "is the price in cents? Then it should be " + scaled(price, "0.01", 2);
            case KILOGRAMS -> "is the weight in kg? Then it should be %s g".formatted(scaled(grams, "1000", 0));
            case OUNCES -> "is the weight in ounces? Then it should be %s g".formatted(scaled(grams, "28.35", 0));
            case POINT_IN_PRICE ->
                "is the point in the price two places too far left? Then it should be " + scaled(price, "100", 2);
            case POINT_IN_GRAMS ->
                "is a point missing in the weight? Then it should be %s g".formatted(scaled(grams, "0.001", 1));
        };
    }

    private static String scaled(BigDecimal number, String factor, int decimals) {
        return number.multiply(new BigDecimal(factor))
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
