package batchwright.food;

import batchwright.quantity.Money;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Foods that have a price, the cheapest for its energy or for its protein first. Each is counted in the pack that is cheapest per
 * edible gram; equally cheap ones keep the given order.
 */
public record PriceRank(By by, List<UnitPrice> prices, List<Food> withoutPrice) {
    /** What is paid for. */
    public enum By {
        KCAL(Nutrient.ENERGY, 1000),
        PROTEIN(Nutrient.PROTEIN, 30);

        private final Nutrient nutrient;
        private final int amount;

        By(Nutrient nutrient, int amount) {
            this.nutrient = nutrient;
            this.amount = amount;
        }

        /** The price of 1000 kcal or of 30 g protein; empty when the food has none. */
        public Optional<Money> of(UnitPrice price) {
            return price.of(nutrient, amount);
        }
    }

    public static PriceRank of(Kitchen kitchen, List<Food> foods, By by) {
        List<UnitPrice> prices = foods.stream()
                .flatMap(food -> UnitPrice.of(kitchen, food).stream())
                .sorted(Comparator.comparing(
                        price -> by.of(price).map(Money::minor).orElse(Long.MAX_VALUE)))
                .toList();
        List<Food> without =
                foods.stream().filter(f -> UnitPrice.of(kitchen, f).isEmpty()).toList();
        return new PriceRank(by, prices, without);
    }
}
