package batchwright.answer;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Nutrients;
import batchwright.food.Part;
import batchwright.food.UnitPrice;
import batchwright.plan.Portion;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One container of a dish, filled in a simple way, to show what the dish can be.
 *
 * @param size how full: least, middle or most of each part's range
 * @param optional whether it holds the parts that may be left out
 */
public record OneContainer(Size size, boolean optional, List<Portion> portions) {
    /** How much of its range each part takes. */
    public enum Size {
        LEAST,
        /** Halfway, on the mark of the scale or the whole piece below it. */
        MIDDLE,
        MOST;

        int grams(Part part) {
            return switch (this) {
                case LEAST -> part.leastGrams();
                case MIDDLE -> (part.leastGrams() + part.mostGrams()) / 2 / part.stepGrams() * part.stepGrams();
                case MOST -> part.mostGrams();
            };
        }
    }

    public static OneContainer of(Dish dish, Size size, boolean optional) {
        return new OneContainer(
                size,
                optional,
                dish.parts().stream()
                        .map(part -> new Portion(part, part.optional() && !optional ? 0 : size.grams(part)))
                        .toList());
    }

    public Nutrients nutrients() {
        return portions.stream().map(Portion::nutrients).reduce(Nutrients.NONE, Nutrients::plus);
    }

    /** By unit price of the cheapest packs, to the cent; empty when a food has no price. */
    public Optional<Money> cost(Kitchen kitchen) {
        return cost(kitchen, portions);
    }

    /** Of portions that are filled in any way. */
    public static Optional<Money> cost(Kitchen kitchen, List<Portion> portions) {
        Map<Food, BigDecimal> grams = new LinkedHashMap<>();
        for (Portion portion : portions) {
            portion.part()
                    .shares()
                    .forEach((food, share) ->
                            grams.merge(food, share.multiply(BigDecimal.valueOf(portion.rawGrams())), BigDecimal::add));
        }
        return UnitPrice.minorOf(kitchen, grams).map(Money::rounded);
    }
}
