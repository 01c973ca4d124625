package batchwright.plan;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.person.Eater;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Stream;

/** What an eater eats in all days of a plan. */
public record EatenFoods(Plan plan, Eater eater) {
    /** Raw edible grams of each food, out of containers and besides. */
    public Map<Food, BigDecimal> grams() {
        var grams = new LinkedHashMap<Food, BigDecimal>();
        eachDay((session, day) -> {
            for (Serving serving : day.servings()) {
                for (Portion portion : session.fill(serving.dish(), eater).portions()) {
                    BigDecimal raw = BigDecimal.valueOf((long) portion.rawGrams() * serving.count());
                    portion.part().shares().forEach((food, share) -> add(grams, food, share.multiply(raw)));
                }
            }
            besides(day).forEach(snack -> add(grams, snack.measure().food(), snack.grams()));
        });
        return grams;
    }

    private static void add(Map<Food, BigDecimal> grams, Food food, BigDecimal more) {
        if (more.signum() > 0) {
            grams.merge(food, more, BigDecimal::add);
        }
    }

    /** What is eaten as it is sold: snacks, and what is always eaten. */
    public Set<Food> besidesContainers() {
        var foods = new LinkedHashSet<Food>();
        eachDay((session, day) ->
                besides(day).forEach(snack -> foods.add(snack.measure().food())));
        return foods;
    }

    private static Stream<Snack> besides(Day day) {
        return Stream.concat(day.snacks().stream(), day.always().stream());
    }

    public Set<Dish> dishes() {
        var dishes = new LinkedHashSet<Dish>();
        eachDay((session, day) -> day.servings().forEach(serving -> dishes.add(serving.dish())));
        return dishes;
    }

    /** How many they are; 0 when the eater is not at the table. */
    public int days() {
        return plan.eaters().stream()
                .filter(days -> days.seat().eater().equals(eater))
                .mapToInt(days -> days.days().size())
                .sum();
    }

    private void eachDay(BiConsumer<Session, Day> what) {
        for (Session session : plan.sessions()) {
            session.eaters().stream()
                    .filter(days -> days.seat().eater().equals(eater))
                    .flatMap(days -> days.days().stream())
                    .forEach(day -> what.accept(session, day));
        }
    }
}
