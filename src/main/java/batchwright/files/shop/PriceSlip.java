package batchwright.files.shop;

import batchwright.quantity.Currency;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.stream.Stream;

/** The slips that make a price by weight wrong by a large factor. */
enum PriceSlip {
    MINOR_UNITS(Double.NaN, "price"),
    KILOGRAMS(1000, "grams"),
    OUNCES(28.35, "grams"),
    POINT_IN_PRICE(0.01, "price"),
    POINT_IN_GRAMS(0.001, "grams"),
    /** Price and weight in each other's place: what was p / g should have been g / p. */
    SWAPPED(Double.NaN, "grams");

    private final double factor;
    private final String column;

    /** @param factor how many times dearer it makes the food; NaN when that depends on weight, price and currency */
    PriceSlip(double factor, String column) {
        this.factor = factor;
        this.column = column;
    }

    /** The one that, undone, comes nearest to the neighbours, counted in times. */
    static PriceSlip likeliest(double times, BigDecimal grams, BigDecimal price, Currency currency) {
        return Stream.of(values())
                .filter(slip -> slip.canBe(currency))
                .min(Comparator.comparingDouble(slip ->
                        Math.abs(Math.log(times / slip.factor(grams.doubleValue(), price.doubleValue(), currency)))))
                .orElseThrow();
    }

    /** Where amounts have no decimals there is nothing smaller to mix them up with, and no point to put wrong. */
    private boolean canBe(Currency currency) {
        return currency.digits() > 0 || (this != MINOR_UNITS && this != POINT_IN_PRICE);
    }

    private double factor(double grams, double price, Currency currency) {
        return switch (this) {
            case MINOR_UNITS -> 1 / currency.least().doubleValue();
            case SWAPPED -> Math.pow(price / grams, 2);
            default -> factor;
        };
    }

    /** Where it was made. */
    String column() {
        return column;
    }

    String says(BigDecimal grams, BigDecimal price, Currency currency) {
        int digits = currency.digits();
        return switch (this) {
            case MINOR_UNITS ->
                "is the price in %s? Then it should be %s"
                        .formatted(
                                digits == 2 ? "cents" : "thousandths",
                                price.multiply(currency.least())
                                        .setScale(digits, RoundingMode.HALF_UP)
                                        .toPlainString());
            case KILOGRAMS -> "is the weight in kg? Then it should be %s g".formatted(scaled(grams, "1000", 0));
            case OUNCES -> "is the weight in ounces? Then it should be %s g".formatted(scaled(grams, "28.35", 0));
            case POINT_IN_PRICE ->
                "is the point in the price two places too far left? Then it should be " + scaled(price, "100", digits);
            case POINT_IN_GRAMS ->
                "is a point missing in the weight? Then it should be %s g".formatted(scaled(grams, "0.001", 1));
            case SWAPPED ->
                "are weight and price in each other's place? Then it should be %s g for %s"
                        .formatted(scaled(price, "1", 0), scaled(grams, "1", digits));
        };
    }

    private static String scaled(BigDecimal number, String factor, int decimals) {
        return number.multiply(new BigDecimal(factor))
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
