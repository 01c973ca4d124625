package batchwright.explain.cost;

import batchwright.food.Food;
import batchwright.food.Nutrient;
import batchwright.plan.Plan;
import batchwright.plan.Purchase;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;

/**
 * What a food costs at the checkout.
 *
 * @param kcal energy of what is used of it beyond what was at home, before any fat is poured off
 */
public record ItemCost(Food food, Money cost, BigDecimal kcal) {
    private static final BigDecimal PER_100_G = BigDecimal.valueOf(100);

    /** Dearest first; foods of which nothing is bought are left out. */
    static List<ItemCost> of(Plan plan) {
        return plan.shopping().stream()
                .filter(p -> p.cost().minor() > 0)
                .map(ItemCost::of)
                .sorted(Comparator.comparing(ItemCost::cost).reversed())
                .toList();
    }

    private static ItemCost of(Purchase p) {
        BigDecimal edible =
                p.usedGrams().subtract(p.fromPantryGrams()).multiply(p.food().edibleShare());
        BigDecimal kcal =
                p.food().per100g().get(Nutrient.ENERGY).multiply(edible).divide(PER_100_G);
        return new ItemCost(p.food(), p.cost(), kcal);
    }
}
