package batchwright.audit;

import batchwright.food.Allergen;
import batchwright.food.CookedYield;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
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
import batchwright.plan.Batch;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Fill;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Portion;
import batchwright.plan.Proof;
import batchwright.plan.Purchase;
import batchwright.plan.Seat;
import batchwright.plan.Serving;
import batchwright.plan.Serving.Storage;
import batchwright.plan.Session;
import batchwright.plan.Snack;
import batchwright.quantity.Currency;
import batchwright.quantity.Length;
import batchwright.quantity.Mass;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * An invented kitchen with round figures and an honest plan for it, worked out on paper: Ben has two containers a day, Anna one
 * without rice, over four days.
 *
 * <pre>
 * one container             kcal  protein    fat  fibre  fruit and vegetables
 *  Ben, chicken and rice     580     50.1    4.8    8.3   150   chicken 150, rice 80, carrot 50, beans 100
 *  Ben, egg pot              594     32.4   27.0    6.0     0   3 eggs of 50, oats 60, milk 240
 *  Anna, chicken             288     39.0    3.6    9.0   180   chicken 120, carrot 60, beans 120
 * snacks
 *  medium banana, 120 g      108      1.2    0.0    2.4   120
 *  handful of peanuts, 30 g  180      7.5   15.0    2.4     0
 *  cup of milk, 250 g        150      7.5    7.5    0.0     0
 * a day
 *  Ben, days 1 and 2        1570     92.4   46.8   21.5   390   egg pot, chicken and rice, 2 bananas, peanuts
 *  Ben, days 3 and 4        1556    110.1   24.6   23.8   540   2 chicken and rice, 2 bananas, peanuts
 *  Anna                      546     47.7   11.1   11.4   300   chicken, cup of milk, 1 banana
 * </pre>
 */
final class LittlePlan {
    static final LocalDate COOKING_DAY = LocalDate.of(2026, 1, 12);
    private static final LocalDate SEEN = LocalDate.of(2026, 1, 5);

    static final Food OATS = food("oats", 0, Set.of(Allergen.GLUTEN), 400, 12, 8, 10, 0);
    static final Food MILK = food("milk", 0, Set.of(Allergen.MILK), 60, 3, 3, 0, 0);
    static final Food EGG = food("egg", 0, Set.of(Allergen.EGG), 140, 12, 10, 0, 0);
    static final Food CHICKEN = food("chicken", 0, Set.of(), 120, 24, 2, 0, 0);
    static final Food RICE = food("rice", 0, Set.of(), 350, 7, 1, 1, 0);
    static final Food CARROT = food("carrot", 20, Set.of(), 40, 1, 0, 3, 100);
    static final Food BEANS = food("beans", 0, Set.of(), 100, 8, 1, 6, 100);
    static final Food BANANA = food("banana", 40, Set.of(), 90, 1, 0, 2, 100);
    static final Food PEANUTS = food("peanuts", 0, Set.of(Allergen.PEANUT), 600, 25, 50, 8, 0);
    static final List<Food> FOODS = List.of(OATS, MILK, EGG, CHICKEN, RICE, CARROT, BEANS, BANANA, PEANUTS);

    static final Measure MEDIUM_BANANA = new Measure(BANANA, "medium", decimal(120), 2, "invented");
    static final Measure HANDFUL = new Measure(PEANUTS, "handful", decimal(30), 1, "invented");
    static final Measure CUP = new Measure(MILK, "cup", decimal(250), 0, "invented");

    static final Pack CARROT_1000 = pack(CARROT, 1000, 170);
    static final Pack CARROT_500 = pack(CARROT, 500, 100);
    static final List<Pack> PACKS = List.of(
            pack(OATS, 500, 200),
            pack(MILK, 1000, 120),
            pack(EGG, 300, 180),
            pack(CHICKEN, 600, 500),
            pack(RICE, 1000, 200),
            CARROT_500,
            CARROT_1000,
            pack(BEANS, 400, 90),
            pack(BANANA, 200, 30),
            pack(PEANUTS, 200, 200));

    private static final CookedYield BOILED = new CookedYield(RICE, "boiled", decimal(3), "memory", "invented");
    static final Part MEAT = new Part("meat", false, 5, false, 100, 200, List.of(mix(CHICKEN, 100)));
    static final Part STARCH =
            new Part("rice", true, 5, false, 40, 100, List.of(new Ingredient(RICE, decimal(80), Optional.of(BOILED))));
    static final Part VEGETABLES =
            new Part("vegetables", false, 5, false, 90, 180, List.of(mix(CARROT, 50), mix(BEANS, 100)));
    static final Part EGGS = new Part("eggs", false, 50, true, 100, 200, List.of(mix(EGG, 50)));
    static final Part PORRIDGE =
            new Part("porridge", false, 5, false, 200, 400, List.of(mix(OATS, 60), mix(MILK, 240)));
    static final Dish CHICKEN_RICE = dish("chicken_rice", 3, true, List.of(MEAT, STARCH, VEGETABLES));
    static final Dish EGG_POT = dish("egg_pot", 2, false, List.of(EGGS, PORRIDGE));

    static final Eater BEN = eater("ben", new Wishes(2, Avoided.NOTHING, List.of(), Optional.empty(), 3, 2));
    static final Eater ANNA = eater(
            "anna",
            new Wishes(
                    1,
                    Avoided.NOTHING.with(Set.of(RICE), Set.of(Allergen.PEANUT), Set.of(EGG_POT)),
                    List.of(new Wishes.Always(CUP, 1)),
                    Optional.of(Set.of(BANANA)),
                    1,
                    1));
    static final Seat BENS_SEAT = new Seat(
            BEN,
            TestTarget.energy(1550, 1500, 1600)
                    .protein(90)
                    .fat(20, 50)
                    .fibre(20)
                    .fruitVeg(380)
                    .container(500, 650)
                    .containerProtein(30)
                    .target());
    /** Fruit and vegetables are exactly on the floor: 300 g. */
    static final Seat ANNAS_SEAT = new Seat(
            ANNA,
            TestTarget.energy(545, 530, 560)
                    .protein(45)
                    .fat(10, 20)
                    .fibre(10)
                    .fruitVeg(300)
                    .container(250, 300)
                    .containerProtein(35)
                    .target());

    private LittlePlan() {}

    static Kitchen kitchen() {
        Map<String, Food> foods = new LinkedHashMap<>();
        FOODS.forEach(food -> foods.put(food.id(), food));
        Map<Food, List<Pack>> packs = new LinkedHashMap<>();
        PACKS.forEach(pack ->
                packs.computeIfAbsent(pack.food(), f -> new ArrayList<>()).add(pack));
        return new Kitchen(
                foods,
                Map.of(BANANA, List.of(MEDIUM_BANANA), PEANUTS, List.of(HANDFUL), MILK, List.of(CUP)),
                Map.of(RICE, List.of(BOILED)),
                packs,
                Map.of(CHICKEN_RICE.id(), CHICKEN_RICE, EGG_POT.id(), EGG_POT),
                Map.of(OATS, lots(100), RICE, lots(300), PEANUTS, lots(150)),
                Currency.USD,
                COOKING_DAY);
    }

    /** The budget is exactly what the plan costs. */
    static PlanRequest request() {
        return new PlanRequest(
                kitchen(), List.of(BENS_SEAT, ANNAS_SEAT), 4, Optional.of(new Money(3120)), 2, Duration.ofSeconds(30));
    }

    static Plan honest() {
        var pot = new Serving(EGG_POT, 1, Storage.FRIDGE);
        var one = new Serving(CHICKEN_RICE, 1, Storage.FRIDGE);
        var two = new Serving(CHICKEN_RICE, 2, Storage.FRIDGE);
        var twoFrozen = new Serving(CHICKEN_RICE, 2, Storage.FREEZER);
        var oneFrozen = new Serving(CHICKEN_RICE, 1, Storage.FREEZER);
        return Plan.of(new Session(
                1,
                request(),
                List.of(
                        new EaterDays(
                                BENS_SEAT,
                                List.of(
                                        bensDay(1, pot, one),
                                        bensDay(2, pot, one),
                                        bensDay(3, two),
                                        bensDay(4, twoFrozen))),
                        new EaterDays(
                                ANNAS_SEAT,
                                List.of(annasDay(1, one), annasDay(2, one), annasDay(3, one), annasDay(4, oneFrozen)))),
                List.of(
                        new Batch(
                                CHICKEN_RICE,
                                List.of(
                                        new Fill(BEN, 6, chickenRice(150, 80, 150)),
                                        new Fill(ANNA, 4, chickenRice(120, 0, 180)))),
                        new Batch(
                                EGG_POT,
                                List.of(new Fill(
                                        BEN, 2, List.of(new Portion(EGGS, 150), new Portion(PORRIDGE, 300)))))),
                shopping(),
                new Proof(new Money(3120), new Money(3120), 1, Duration.ZERO)));
    }

    /**
     * As purchased: carrot 540 g edible / 0.8 = 675 g; banana 12 x 120 g / 0.6 = 2400 g. Cost 15.00 chicken + 2.00 rice +
     * 1.70 carrot + 2.70 beans + 1.80 egg + 2.00 oats + 2.40 milk + 3.60 banana = 31.20.
     */
    private static List<Purchase> shopping() {
        return List.of(
                line(OATS, 120, 100, Map.of(packOf(OATS), 1)), // 2 x 60
                line(MILK, 1480, 0, Map.of(packOf(MILK), 2)), // 2 x 240 + 4 x 250
                line(EGG, 300, 0, Map.of(packOf(EGG), 1)), // 2 x 150
                line(CHICKEN, 1380, 0, Map.of(packOf(CHICKEN), 3)), // 6 x 150 + 4 x 120
                line(RICE, 480, 300, Map.of(packOf(RICE), 1)), // 6 x 80
                line(CARROT, 675, 0, Map.of(CARROT_1000, 1)), // (6 x 50 + 4 x 60) / 0.8
                line(BEANS, 1080, 0, Map.of(packOf(BEANS), 3)), // 6 x 100 + 4 x 120
                line(BANANA, 2400, 0, Map.of(packOf(BANANA), 12)),
                line(PEANUTS, 120, 120, Map.of())); // 4 x 30
    }

    private static List<Portion> chickenRice(int meat, int rice, int vegetables) {
        return List.of(new Portion(MEAT, meat), new Portion(STARCH, rice), new Portion(VEGETABLES, vegetables));
    }

    private static Day bensDay(int day, Serving... servings) {
        return new Day(day, List.of(servings), List.of(new Snack(MEDIUM_BANANA, 2), new Snack(HANDFUL, 1)), List.of());
    }

    private static Day annasDay(int day, Serving serving) {
        return new Day(day, List.of(serving), List.of(new Snack(MEDIUM_BANANA, 1)), List.of(new Snack(CUP, 1)));
    }

    static Pack packOf(Food food) {
        return PACKS.stream().filter(p -> p.food().equals(food)).findFirst().orElseThrow();
    }

    private static Purchase line(Food food, int used, int fromPantry, Map<Pack, Integer> packs) {
        return new Purchase(food, packs, decimal(used), decimal(fromPantry));
    }

    private static Pack pack(Food food, int grams, long minor) {
        return new Pack(food, "corner shop", grams + " g", decimal(grams), new Money(minor), SEEN, "invented");
    }

    private static Ingredient mix(Food food, int grams) {
        return new Ingredient(food, decimal(grams), Optional.empty());
    }

    private static Dish dish(String id, int fridgeDays, boolean freezes, List<Part> parts) {
        return new Dish(id, id, Dish.Kind.MAIN, fridgeDays, freezes, "Until steaming.", parts, List.of(), List.of());
    }

    static Food food(
            String id, int refuse, Set<Allergen> allergens, int kcal, int protein, int fat, int fibre, int fruitVeg) {
        var values = new EnumMap<Nutrient, BigDecimal>(Nutrient.class);
        values.put(Nutrient.ENERGY, decimal(kcal));
        values.put(Nutrient.PROTEIN, decimal(protein));
        values.put(Nutrient.FAT, decimal(fat));
        values.put(Nutrient.FIBRE, decimal(fibre));
        values.put(Nutrient.FRUIT_VEG, decimal(fruitVeg));
        return new Food(
                id, id, "invented", Optional.empty(), id, Nutrients.of(values), decimal(refuse), allergens, false);
    }

    static List<Lot> lots(int grams) {
        return List.of(Lot.of(decimal(grams)));
    }

    static BigDecimal decimal(int value) {
        return BigDecimal.valueOf(value);
    }

    private static Eater eater(String id, Wishes wishes) {
        return new Eater(
                id,
                id,
                new Body(Sex.FEMALE, 30, new Mass(60), new Length(170), Optional.empty()),
                new PalNumber(1.6),
                Goal.HOLD,
                Health.NOT_SAID,
                Adjustments.NONE,
                wishes);
    }
}
