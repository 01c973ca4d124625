package batchwright.food;

import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;

/**
 * What a food costs by weight, in the pack (or loose) that is cheapest per edible gram. For comparing foods: at the checkout
 * whole packs are paid.
 */
public final class UnitPrice {
    private static final BigDecimal PER = BigDecimal.valueOf(100);
    private final Pack pack;

    private UnitPrice(Pack pack) {
        this.pack = pack;
    }

    /** Empty when no shop of the files sells the food. */
    public static Optional<UnitPrice> of(Kitchen kitchen, Food food) {
        return kitchen.packsOf(food).stream()
                .min(Comparator.comparing(UnitPrice::perGram))
                .map(UnitPrice::new);
    }

    private static BigDecimal perGram(Pack pack) {
        return BigDecimal.valueOf(pack.tag().price().minor()).divide(edibleGrams(pack), MathContext.DECIMAL64);
    }

    /** Edible grams that the stated price buys. */
    private static BigDecimal edibleGrams(Pack pack) {
        return pack.tag().grams().multiply(pack.food().edibleShare());
    }

    public Pack pack() {
        return pack;
    }

    /** What edible grams cost, in minor units with four decimals. */
    public BigDecimal minorOf(BigDecimal edibleGrams) {
        return pack.tag().price().shareOf(edibleGrams, edibleGrams(pack));
    }

    /** What so much of a nutrient costs, to the minor unit; empty when the food has none of it. */
    public Optional<Money> of(Nutrient nutrient, int amount) {
        BigDecimal per100g = pack.food().per100g().get(nutrient);
        if (per100g.signum() <= 0) {
            return Optional.empty();
        }
        BigDecimal grams = BigDecimal.valueOf(amount).multiply(PER).divide(per100g, MathContext.DECIMAL64);
        return Optional.of(Money.rounded(minorOf(grams)));
    }

    /** What raw edible grams of several foods cost together, in minor units with four decimals; empty when one has no price. */
    public static Optional<BigDecimal> minorOf(Kitchen kitchen, Map<Food, BigDecimal> edibleGrams) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Map.Entry<Food, BigDecimal> entry : edibleGrams.entrySet()) {
            Optional<UnitPrice> price = of(kitchen, entry.getKey());
            if (price.isEmpty()) {
                return Optional.empty();
            }
            sum = sum.add(price.get().minorOf(entry.getValue()));
        }
        return Optional.of(sum);
    }
}
