package batchwright.explain;

import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
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
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.quantity.Currency;
import batchwright.quantity.Length;
import batchwright.quantity.Mass;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Requests to work out on paper. 100 g of stew are 100 kcal, 10 g of protein, 2 g of fat, 2 g of fibre and no fruit or
 * vegetables; a container holds 200 to 400 g of it, in steps of 5 g. A nut bar is 60 kcal and nothing else. Ann weighs 70 kg,
 * gets two containers and no snacks, and her day holds 690 to 710 kcal. All of it is invented.
 */
final class LittleKitchen {
    static final Food MEAT = food(
            "meat",
            Map.of(
                    Nutrient.ENERGY, "100",
                    Nutrient.PROTEIN, "10",
                    Nutrient.FAT, "2",
                    Nutrient.FIBRE, "2",
                    Nutrient.CARBOHYDRATE, "12",
                    Nutrient.SODIUM, "100"),
            Set.of(Allergen.MILK));
    static final Food BAR = food("bar", Map.of(Nutrient.ENERGY, "60"), Set.of());
    static final Dish STEW = dish("stew", 4, true, MEAT);
    static final Dish CURRY = dish("curry", 4, true, MEAT);
    /** 700 kcal +- 10, nothing else asked for. */
    static final TestTarget EASY = TestTarget.energy(700, 690, 710);

    static final Wishes TWO_BOXES = new Wishes(2, Avoided.NOTHING, List.of(), Optional.empty(), 0, 0);

    private LittleKitchen() {}

    static PlanRequest request(TestTarget target) {
        return request(2, 3, List.of(STEW), seat("ann", TWO_BOXES, target));
    }

    static PlanRequest request(int days, int mostDishes, List<Dish> dishes, Seat... seats) {
        return new PlanRequest(
                kitchen(dishes, List.of(MEAT, BAR)),
                List.of(seats),
                days,
                Optional.empty(),
                mostDishes,
                Duration.ofSeconds(10));
    }

    static final LocalDate DAY = LocalDate.of(2026, 1, 5);

    static Kitchen kitchen(List<Dish> dishes, List<Food> sold) {
        Map<String, Dish> byId = new LinkedHashMap<>();
        dishes.forEach(d -> byId.put(d.id(), d));
        Map<Food, List<Pack>> packs = new LinkedHashMap<>();
        sold.forEach(f -> packs.put(f, List.of(pack(f))));
        var bar = new Measure(BAR, "piece", BigDecimal.valueOf(100), 3, "invented");
        return new Kitchen(
                Map.of("meat", MEAT, "bar", BAR),
                Map.of(BAR, List.of(bar)),
                Map.of(),
                packs,
                byId,
                Map.of(),
                Currency.USD,
                DAY);
    }

    static Seat seat(String id, Wishes wishes, TestTarget target) {
        var body = new Body(Sex.FEMALE, 30, new Mass(70), new Length(170), Optional.empty());
        String name = id.substring(0, 1).toUpperCase(Locale.ROOT) + id.substring(1);
        return new Seat(
                new Eater(id, name, body, new PalNumber(1.6), Goal.HOLD, Health.NOT_SAID, Adjustments.NONE, wishes),
                target.target());
    }

    static Dish dish(String id, int fridgeDays, boolean freezes, Food... foods) {
        List<Part> parts = new ArrayList<>();
        for (Food food : foods) {
            parts.add(new Part(
                    food.id(),
                    false,
                    5,
                    false,
                    200,
                    400,
                    List.of(new Ingredient(food, BigDecimal.TEN, Optional.empty()))));
        }
        return new Dish(id, id, Dish.Kind.MAIN, fridgeDays, freezes, "Until steaming.", parts, List.of(), List.of());
    }

    private static Food food(String id, Map<Nutrient, String> values, Set<Allergen> allergens) {
        Map<Nutrient, BigDecimal> per100g = new LinkedHashMap<>();
        values.forEach((n, v) -> per100g.put(n, new BigDecimal(v)));
        return new Food(
                id, id, "invented", Optional.empty(), id, Nutrients.of(per100g), BigDecimal.ZERO, allergens, false);
    }

    private static Pack pack(Food food) {
        return new Pack(food, "shop", "1 kg", BigDecimal.valueOf(1000), new Money(100), DAY, "invented");
    }
}
