package batchwright.plan;

import batchwright.food.Dish;
import batchwright.food.Food;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** What an eater eats in all days of a plan. */
public record EatenFoods(Session session, EaterDays eater) {
    /** Raw edible grams of each food, out of containers and besides. */
    public Map<Food, BigDecimal> grams() {
        var grams = new LinkedHashMap<Food, BigDecimal>();
        for (Day day : eater.days()) {
            day.servings().forEach(serving -> fill(serving).portions().forEach(portion -> portion.part()
                    .shares()
                    .forEach((food, share) -> add(
                            grams, food, share.multiply(BigDecimal.valueOf((long) portion.rawGrams() * serving.count()))))));
            day.snacks().forEach(snack -> add(grams, snack.measure().food(), snack.grams()));
            day.always().forEach(snack -> add(grams, snack.measure().food(), snack.grams()));
        }
        return grams;
    }

    private static void add(Map<Food, BigDecimal> grams, Food food, BigDecimal more) {
        if (more.signum() > 0) {
            grams.merge(food, more, BigDecimal::add);
        }
    }

    private Fill fill(Serving serving) {
        return session.fill(serving.dish(), eater.seat().eater());
    }

    /** What is eaten as it is sold: snacks, and what is always eaten. */
    public Set<Food> besidesContainers() {
        var foods = new LinkedHashSet<Food>();
        for (Day day : eater.days()) {
            day.snacks().forEach(snack -> foods.add(snack.measure().food()));
            day.always().forEach(snack -> foods.add(snack.measure().food()));
        }
        return foods;
    }

    public Set<Dish> dishes() {
        var dishes = new LinkedHashSet<Dish>();
        eater.days().forEach(day -> day.servings().forEach(serving -> dishes.add(serving.dish())));
        return dishes;
    }
}
