package batchwright.solve.session;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.limit.TestTarget;
import batchwright.person.Adjustments;
import batchwright.person.Avoided;
import batchwright.person.Body;
import batchwright.person.Eater;
import batchwright.person.Goal;
import batchwright.person.Health;
import batchwright.person.PalNumber;
import batchwright.person.Sex;
import batchwright.person.Wishes;
import batchwright.plan.Cooking;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Seat;
import batchwright.quantity.Currency;
import batchwright.quantity.Length;
import batchwright.quantity.Mass;
import batchwright.quantity.Money;
import batchwright.solve.BatchPlanner;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Kitchens in which nothing is open but the dish and the packs: one eater who eats one container a day, any; a container is so many
 * grams of each food, never more or less; a dish keeps two days.
 */
public final class LittleSessions {
    public static final LocalDate DAY_1 = LocalDate.of(2026, 1, 5);

    private final Map<String, Food> foods = new LinkedHashMap<>();
    private final Map<Food, List<Pack>> packs = new LinkedHashMap<>();
    private final Map<String, Dish> dishes = new LinkedHashMap<>();
    private final Map<Food, List<Lot>> pantry = new LinkedHashMap<>();

    /** A food and its packs as grams and cents in turn. */
    public LittleSessions sells(String id, boolean perishable, int... gramsAndCents) {
        var food = new Food(
                id,
                id,
                "invented",
                Optional.empty(),
                id,
                Nutrients.of(Map.of(Nutrient.ENERGY, BigDecimal.valueOf(100))),
                BigDecimal.ZERO,
                Set.of(),
                perishable);
        foods.put(id, food);
        List<Pack> sold = new ArrayList<>();
        for (int i = 0; i < gramsAndCents.length; i += 2) {
            sold.add(new Pack(
                    food,
                    "shop",
                    gramsAndCents[i] + " g",
                    BigDecimal.valueOf(gramsAndCents[i]),
                    new Money(gramsAndCents[i + 1]),
                    DAY_1,
                    "invented"));
        }
        packs.put(food, sold);
        return this;
    }

    /** A dish with this many grams of a food in each container, foods and grams in turn. */
    public LittleSessions dish(String id, Object... foodsAndGrams) {
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < foodsAndGrams.length; i += 2) {
            int grams = (int) foodsAndGrams[i + 1];
            var ingredient = new Ingredient(food((String) foodsAndGrams[i]), BigDecimal.TEN, Optional.empty());
            parts.add(new Part("part" + i, false, 5, false, grams, grams, List.of(ingredient)));
        }
        dishes.put(id, new Dish(id, id, Dish.Kind.MAIN, 2, false, "Until steaming.", parts, List.of(), List.of()));
        return this;
    }

    /** At home, good until a day of the plan; 0: for ever. */
    public LittleSessions atHome(String food, int grams, int untilDay) {
        Optional<LocalDate> date = untilDay == 0 ? Optional.empty() : Optional.of(DAY_1.plusDays(untilDay - 1L));
        pantry.computeIfAbsent(food(food), f -> new ArrayList<>()).add(new Lot(BigDecimal.valueOf(grams), date));
        return this;
    }

    public Food food(String id) {
        return Objects.requireNonNull(foods.get(id));
    }

    public PlanRequest request(int days, int cooks, boolean vary) {
        var wishes = new Wishes(1, Avoided.NOTHING, List.of(), Optional.empty(), 0, 0);
        var eater = new Eater(
                "eater",
                "Eater",
                new Body(Sex.MALE, 30, new Mass(75), new Length(175), Optional.empty()),
                new PalNumber(1.6),
                Goal.HOLD,
                Health.NOT_SAID,
                Adjustments.NONE,
                wishes);
        var target = TestTarget.energy(500, 0, 9999).target();
        var kitchen = new Kitchen(foods, Map.of(), Map.of(), packs, dishes, pantry, Currency.USD, DAY_1);
        return new PlanRequest(
                        kitchen, List.of(new Seat(eater, target)), days, Optional.empty(), 1, Duration.ofSeconds(60))
                .withCooking(new Cooking(cooks, vary));
    }

    public static PlanResult plan(PlanRequest request) {
        return new SessionsPlanner(new BatchPlanner()).plan(request);
    }
}
