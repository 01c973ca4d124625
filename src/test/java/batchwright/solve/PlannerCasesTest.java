package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

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
import batchwright.food.Staple;
import batchwright.limit.DayTarget;
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
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Small requests, each worked out on paper, that a planner once answered wrongly. Found at random and made smaller. */
class PlannerCasesTest {
    /**
     * One dish is 125 g of food3: 607.75 kcal, 8.9 g of fat. The other is 45 g of food2 (86.4 kcal, 6.8 g), 166 to 498 g of half
     * food2, half food5 (272.4 kcal, 9.75 g of fat in 100 g) and, if wanted, 135 g of food3 (656.4 kcal, 9.6 g of fat).
     *
     * <p>A day of two containers must hold 1712 to 1942 kcal and at most 47 g of fat. Two of the first: 1215.5 kcal. Two of the
     * second: 1077, 1529 or 1982 kcal without the last part, 2390 kcal and more with it. One of each: without the last part
     * only 415 g reach the band, and have 56 g of fat; with it 166 g do: 1802.7 kcal and 41.5 g of fat. So three days need
     * three of each, and 780 / 0.51 = 1529.4 g of food3 (2 packs of 3.93), 384 / 0.59 = 650.8 g of food2 (2 of 3.33) and 249 g
     * of food5 (1 of 0.66): 15.18.
     */
    @Test
    void the_only_plan_has_the_optional_part_in() {
        Food food2 = food("food2", 41, "192.0", "11.4", "15.2");
        Food food3 = food("food3", 49, "486.2", "11.4", "7.1");
        Food food5 = food("food5", 0, "352.8", "17.4", "4.3");
        Dish one = dish("dish0", 2, part("part0", false, 5, 125, 125, food3));
        Dish other = dish(
                "dish2",
                1,
                part("part0", false, 83, 166, 498, food2, food5),
                part("part1", true, 5, 135, 135, food3),
                part("part2", false, 5, 45, 45, food2));
        Seat seat = seat(
                "eater0", 2, 0, TestTarget.energy(1827, 1712, 1942).fat(24, 47).target());

        costs(
                1518,
                request(
                        3,
                        List.of(one, other),
                        Map.of(),
                        List.of(pack(food2, 650, 333), pack(food3, 1050, 393), pack(food5, 350, 66)),
                        seat));
    }

    /**
     * food0 is 2.95 for 100 g, food1 4.58 for 300 g; a snack is 53 g of food1 (80.9 kcal, 3.0 g of protein).
     *
     * <pre>
     *                        kcal   protein  food0    food1
     *  dish0, 66 g            303.3   23.0    66        65
     *  dish0, 132 g           507.4   42.3   132        65
     *  dish1                  506.4   45.1   147.9      32.1
     * </pre>
     *
     * The second eater needs 879 to 999 kcal from two containers and a snack at most: 2 x dish0 give 606.6 or 1014.8, with
     * 132 g and dish1 1013.7, 2 x dish1 1012.7; only 66 g, dish1 and a snack fit, 890.6. That is 427.8 g of food0 and 300.2 g of
     * food1 in two days. The first needs 45 g of protein from one container: dish1 makes 723.7 g of food0 and 364.3 g of food1,
     * 8 and 2 packs, 32.76; dish0 of 132 g with a snack 691.8 g and 536.2 g, 7 and 2 packs, 29.81.
     */
    @Test
    void the_eater_who_shares_a_batch_takes_the_other_dish_and_a_snack() {
        Food food0 = food("food0", 0, "309.2", "29.3", "8.8");
        Food food1 = food("food1", 0, "152.7", "5.6", "4.3");
        Dish dish0 = dish("dish0", 3, part("part0", false, 5, 65, 65, food1), part("part1", false, 66, 66, 132, food0));
        Part mixed = new Part(
                "part0",
                false,
                5,
                false,
                55,
                55,
                List.of(
                        new Ingredient(food0, BigDecimal.valueOf(5), Optional.empty()),
                        new Ingredient(food1, BigDecimal.valueOf(7), Optional.empty())));
        Dish dish1 = dish("dish1", 2, mixed, part("part1", false, 5, 125, 125, food0));
        Seat first =
                seat("eater0", 1, 1, TestTarget.energy(549, 0, 9999).protein(45).target());
        Seat second = seat("eater1", 2, 2, TestTarget.energy(938, 879, 999).target());
        var snack = new Measure(food1, "piece", BigDecimal.valueOf(53), 1, "invented");

        costs(
                2981,
                request(
                        2,
                        List.of(dish0, dish1),
                        Map.of(food1, List.of(snack)),
                        List.of(pack(food0, 100, 295), pack(food1, 300, 458)),
                        first,
                        second));
    }

    /**
     * One container a day holds 1603.9 kcal (102 g in the middle part) or 1855.1 kcal (153 g); 2601 kcal need two snacks of
     * 147 g of food3 (538.9 kcal each) with either. Six snacks are 882 g, of which 700 g are at home: the 350 g for 1.89 do, the
     * 1000 g for 3.12 are not needed. 3 x 399 g / 0.73 = 1639.7 g of food1 are 3 packs, 9.12; 3 x 133 g / 0.96 = 415.6 g of
     * food2 one, 2.24; 3 x 187 g of food0 are at home. Together 13.25.
     */
    @Test
    void the_small_pack_is_enough() {
        Food food0 = perishable(food("food0", 0, "492.4", "10.5", "22.3"));
        Food food1 = perishable(food("food1", 27, "88.8", "3.5", "0.6"));
        Food food2 = food("food2", 4, "247.3", "6.7", "9.8");
        Food food3 = food("food3", 0, "366.6", "14.2", "3.9");
        Part mixed = new Part(
                "part0",
                false,
                76,
                true,
                532,
                532,
                List.of(
                        new Ingredient(food1, BigDecimal.valueOf(9), Optional.empty()),
                        new Ingredient(food2, BigDecimal.valueOf(3), Optional.empty())));
        Dish dish = dish(
                "dish2", 2, mixed, part("part1", false, 51, 102, 153, food0), part("part2", false, 5, 85, 85, food0));
        Seat seat = seat("eater0", 1, 2, TestTarget.energy(2840, 2601, 3079).target());
        var snack = new Measure(food3, "piece", BigDecimal.valueOf(147), 2, "invented");
        PlanRequest nothingAtHome = request(
                3,
                List.of(dish),
                Map.of(food3, List.of(snack)),
                List.of(
                        pack(food0, 600, 422),
                        pack(food1, 600, 304),
                        pack(food2, 550, 224),
                        pack(food3, 350, 189),
                        pack(food3, 1000, 312)),
                seat);

        costs(1325, Variants.pantry(Variants.pantry(nothingAtHome, food0, 740), food3, 700));
    }

    /**
     * Two containers of 100 g in 2 days. Of the cheap food that is 1.00, but its dish is fried with mustard seeds; of the dear one
     * 3.00. Who avoids mustard gets the dear one.
     */
    @Test
    void an_allergen_of_a_staple_never_reaches_who_avoids_it() {
        Food cheap = food("cheap", 0, "500", "20", "10");
        Food dear = food("dear", 0, "500", "20", "10");
        Dish plain = dish("plain", 2, part("part0", false, 5, 100, 100, dear));
        Dish spiced = dish("spiced", 2, List.of("mustard seeds"), part("part0", false, 5, 100, 100, cheap));
        var target = TestTarget.energy(500, 490, 510).target();
        List<Pack> sold = List.of(pack(cheap, 200, 100), pack(dear, 200, 300));
        Seat eatsAll = seat("eater0", 1, 0, target);
        Seat avoids = new Seat(
                eatsAll.eater()
                        .withWishes(eatsAll.eater().wishes().withAvoided(Set.of(), Set.of(Allergen.MUSTARD), Set.of())),
                target);

        costs(100, request(2, List.of(plain, spiced), Map.of(), sold, eatsAll));
        costs(300, request(2, List.of(plain, spiced), Map.of(), sold, avoids));
    }

    private static void costs(long minor, PlanRequest request) {
        assertThat(BruteForce.leastCost(request)).isEqualTo(OptionalLong.of(minor));
        assertThat(Outcome.of(new BatchPlanner().plan(request))).isEqualTo("costs " + minor);
        PlanRequest tight = Variants.withBudget(request, minor);
        assertThat(Outcome.of(new BatchPlanner().plan(tight))).isEqualTo("costs " + minor);
    }

    private static PlanRequest request(
            int days, List<Dish> dishes, Map<Food, List<Measure>> measures, List<Pack> sold, Seat... seats) {
        Map<String, Food> foods = new LinkedHashMap<>();
        Map<Food, List<Pack>> packs = new LinkedHashMap<>();
        for (Pack pack : sold) {
            foods.put(pack.food().id(), pack.food());
            packs.computeIfAbsent(pack.food(), food -> new ArrayList<>()).add(pack);
        }
        Map<String, Dish> byId = new LinkedHashMap<>();
        dishes.forEach(dish -> byId.put(dish.id(), dish));
        var kitchen =
                new Kitchen(foods, measures, Map.of(), packs, byId, Map.of(), Currency.USD, LocalDate.of(2026, 1, 5));
        return new PlanRequest(kitchen, List.of(seats), days, Optional.empty(), 3, Duration.ofSeconds(30));
    }

    private static Food food(String id, int refuse, String kcal, String protein, String fat) {
        Map<Nutrient, BigDecimal> values = Map.of(
                Nutrient.ENERGY, new BigDecimal(kcal),
                Nutrient.PROTEIN, new BigDecimal(protein),
                Nutrient.FAT, new BigDecimal(fat));
        return new Food(
                id,
                id,
                "invented",
                Optional.empty(),
                id,
                Nutrients.of(values),
                BigDecimal.valueOf(refuse),
                Set.of(),
                false);
    }

    private static Food perishable(Food f) {
        return new Food(
                f.id(),
                f.name(),
                f.group(),
                f.ndb(),
                f.description(),
                f.per100g(),
                f.refusePercent(),
                f.allergens(),
                true);
    }

    /** A part of equal amounts of its foods. */
    private static Part part(String name, boolean optional, int step, int least, int most, Food... foods) {
        List<Ingredient> mix = new ArrayList<>();
        for (Food food : foods) {
            mix.add(new Ingredient(food, BigDecimal.TEN, Optional.empty()));
        }
        return new Part(name, optional, step, step != Part.SCALE_STEP_GRAMS, least, most, mix);
    }

    private static Dish dish(String id, int fridgeDays, Part... parts) {
        return dish(id, fridgeDays, List.of(), parts);
    }

    private static Dish dish(String id, int fridgeDays, List<String> staples, Part... parts) {
        return new Dish(
                id,
                id,
                Dish.Kind.MAIN,
                fridgeDays,
                true,
                "Until steaming.",
                List.of(parts),
                staples.stream().map(Staple::of).toList(),
                List.of());
    }

    private static Pack pack(Food food, int grams, long minor) {
        return new Pack(
                food,
                "shop",
                grams + " g",
                BigDecimal.valueOf(grams),
                new Money(minor),
                LocalDate.of(2026, 1, 5),
                "invented");
    }

    private static Seat seat(String id, int containersADay, int snackMeasures, DayTarget target) {
        var wishes = new Wishes(containersADay, Avoided.NOTHING, List.of(), Optional.empty(), snackMeasures, 2);
        return new Seat(
                new Eater(
                        id,
                        id,
                        new Body(Sex.MALE, 30, new Mass(75), new Length(175), Optional.empty()),
                        new PalNumber(1.6),
                        Goal.HOLD,
                        Health.NOT_SAID,
                        Adjustments.NONE,
                        wishes),
                target);
    }
}
