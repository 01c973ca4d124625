package batchwright.solve.session;

import batchwright.food.Food;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Session;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Edible grams by food that a session uses; asked for, they are grams as purchased.
 *
 * @param batches what is cooked
 * @param forBatches what is to be at hand for that
 * @param snacks what is eaten besides containers
 */
public record Used(Map<Food, BigDecimal> batches, Map<Food, BigDecimal> forBatches, Map<Food, BigDecimal> snacks) {
    public static Used of(Session session) {
        Map<Food, BigDecimal> batches = new LinkedHashMap<>();
        session.batches()
                .forEach(b -> b.ingredients().forEach((food, grams) -> batches.merge(food, grams, BigDecimal::add)));
        Map<Food, BigDecimal> forBatches = new LinkedHashMap<>();
        session.batches()
                .forEach(b -> b.atHand(session.kitchen().shops())
                        .forEach((food, grams) -> forBatches.merge(food, grams, BigDecimal::add)));
        Map<Food, BigDecimal> snacks = new LinkedHashMap<>();
        for (EaterDays eater : session.eaters()) {
            for (Day day : eater.days()) {
                day.snacks().forEach(s -> snacks.merge(s.measure().food(), s.grams(), BigDecimal::add));
                day.always().forEach(s -> snacks.merge(s.measure().food(), s.grams(), BigDecimal::add));
            }
        }
        return new Used(batches, forBatches, snacks);
    }

    public BigDecimal of(Food food) {
        BigDecimal cooked = batches.getOrDefault(food, BigDecimal.ZERO);
        return asPurchased(food, cooked.add(snacks.getOrDefault(food, BigDecimal.ZERO)));
    }

    /** What is to be at hand besides what is used. */
    public BigDecimal room(Food food) {
        return asPurchased(food, forBatches.getOrDefault(food, BigDecimal.ZERO)).subtract(cooked(food));
    }

    public BigDecimal cooked(Food food) {
        return asPurchased(food, batches.getOrDefault(food, BigDecimal.ZERO));
    }

    public BigDecimal besides(Food food) {
        return asPurchased(food, snacks.getOrDefault(food, BigDecimal.ZERO));
    }

    private static BigDecimal asPurchased(Food food, BigDecimal edible) {
        return edible.divide(food.edibleShare(), MathContext.DECIMAL64);
    }
}
