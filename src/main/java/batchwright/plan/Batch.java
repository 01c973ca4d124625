package batchwright.plan;

import batchwright.food.Dish;
import batchwright.food.Food;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All containers of a dish that are cooked in the session. */
public record Batch(Dish dish, List<Fill> fills) {
    public Batch {
        fills = List.copyOf(fills);
    }

    public int containers() {
        return fills.stream().mapToInt(Fill::containers).sum();
    }

    /** Raw edible grams of each food in the whole batch, in the order of the recipe; foods of left-out parts are absent. */
    public Map<Food, BigDecimal> ingredients() {
        var grams = new LinkedHashMap<Food, BigDecimal>();
        for (Fill fill : fills) {
            for (Portion portion : fill.portions()) {
                BigDecimal raw = BigDecimal.valueOf((long) portion.rawGrams() * fill.containers());
                if (raw.signum() > 0) {
                    portion.part()
                            .shares()
                            .forEach((food, share) -> grams.merge(food, raw.multiply(share), BigDecimal::add));
                }
            }
        }
        return grams;
    }
}
