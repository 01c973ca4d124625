package batchwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.food.Part;
import batchwright.limit.TestTarget;
import batchwright.needs.TestEater;
import batchwright.needs.intakes.Intake;
import batchwright.needs.intakes.Intake.Standing;
import batchwright.person.Eater;
import batchwright.person.Sex;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A made-up plan of foods of USDA SR28, its average day worked out by hand. Per 100 g in the source:
 *
 * <pre>
 *                     CA mg   FE mg   VITC mg  VITD ug  FOL ug  FOLDFE ug
 *  20120 pasta, dry,
 *        enriched     21      3.30     0       0        237     391
 *  11090 broccoli     47      0.73    89.2     0         63      63
 *  01077 whole milk  113      0.03     0       1.3        5       5
 *  09003 apple         6      0.12     4.6     0          3       3
 * </pre>
 *
 * A container holds 150 g of pasta and 200 g of broccoli. Every day has a cup of milk, 244 g. Day 1 has one container, day 2 two and
 * an apple of 182 g. So two days hold 450 g of pasta, 600 g of broccoli, 488 g of milk and 182 g of apple.
 *
 * <p>Source: US Department of Agriculture, Agricultural Research Service. USDA National Nutrient Database for Standard Reference,
 * Release 28, 2015.
 */
class AverageDayPublishedTest {
    private static final Food PASTA = food("pasta", "21", "3.30", "0", "0", "237", "391");
    private static final Food BROCCOLI = food("broccoli", "47", "0.73", "89.2", "0", "63", "63");
    private static final Food MILK = food("milk", "113", "0.03", "0", "1.3", "5", "5");
    private static final Food APPLE = food("apple", "6", "0.12", "4.6", "0", "3", "3");

    private static final Part STARCH = part("starch", PASTA);
    private static final Part VEGETABLE = part("vegetable", BROCCOLI);
    private static final Dish DISH = new Dish(
            "pasta_broccoli",
            "pasta with broccoli",
            Dish.Kind.MAIN,
            3,
            true,
            "Until steaming.",
            List.of(STARCH, VEGETABLE),
            List.of(),
            List.of());
    private static final Snack CUP = new Snack(new Measure(MILK, "cup", new BigDecimal("244"), 0, "SR28"), 1);
    private static final Snack ONE_APPLE = new Snack(new Measure(APPLE, "medium", new BigDecimal("182"), 1, "SR28"), 1);

    private static final Eater EATER =
            TestEater.of(TestEater.body(Sex.FEMALE, 60, 165, 40)).eater();
    private static final Seat SEAT = new Seat(
            EATER,
            TestTarget.energy(2000, 1900, 2100)
                    .protein(80)
                    .fat(40, 80)
                    .fibre(28)
                    .fruitVeg(400)
                    .container(300, 900)
                    .containerProtein(15)
                    .target());
    private static final EaterDays DAYS = new EaterDays(
            SEAT,
            List.of(
                    new Day(1, List.of(new Serving(DISH, 1, Serving.Storage.FRIDGE)), List.of(), List.of(CUP)),
                    new Day(
                            2,
                            List.of(new Serving(DISH, 2, Serving.Storage.FRIDGE)),
                            List.of(ONE_APPLE),
                            List.of(CUP))));
    private static final Session SESSION = TestSession.of(
            List.of(DAYS),
            List.of(new Batch(
                    DISH, List.of(new Fill(EATER, 3, List.of(new Portion(STARCH, 150), new Portion(VEGETABLE, 200)))))),
            List.of());

    /**
     * Half of: calcium 94.5 + 282 + 551.44 + 10.92 = 938.86; iron 14.85 + 4.38 + 0.1464 + 0.2184 = 19.5948; vitamin C 535.2 + 8.372 =
     * 543.572; vitamin D 6.344; folate 1066.5 + 378 + 24.4 + 5.46 = 1474.36; DFE 1759.5 + 378 + 24.4 + 5.46 = 2167.36.
     */
    @ParameterizedTest
    @CsvSource({
        "CALCIUM, 469.43",
        "IRON, 9.7974",
        "VITAMIN_C, 271.786",
        "VITAMIN_D, 3.172",
        "FOLATE, 737.18",
        "FOLATE_DFE, 1083.68"
    })
    void the_average_is_the_one_worked_out_by_hand(Nutrient nutrient, String average) {
        Nutrients day = SESSION.averageDay(DAYS);

        assertThat(day.get(nutrient)).isEqualByComparingTo(average);
        assertThat(day.isComplete(nutrient)).isTrue();
    }

    /**
     * A woman of 40 years: calcium 1000 mg, iron 18 mg, vitamin C 75 mg, vitamin D 15 ug, folate 400 ug. Of 225 g of pasta a day 2.25 x
     * (391 - 237) / 0.7 = 495 ug are folic acid, which is not above 1000.
     */
    @ParameterizedTest
    @CsvSource({
        "CALCIUM, 46, SHORT",
        "IRON, 54, SHORT",
        "VITAMIN_C, 362, WITHIN",
        "VITAMIN_D, 21, SHORT",
        "FOLATE_DFE, 270, WITHIN"
    })
    void and_stands_so_to_what_is_published(Nutrient nutrient, int percent, Standing standing) {
        Intake intake = intake(nutrient);

        assertThat(intake.percent()).contains(percent);
        assertThat(intake.standing()).isEqualTo(standing);
    }

    @Test
    void folic_acid_is_counted_apart() {
        assertThat(intake(Nutrient.FOLATE_DFE).counted())
                .hasValueSatisfying(counted -> assertThat(counted).isEqualByComparingTo("495"));
    }

    /** The foods above have no zinc noted. */
    @Test
    void what_a_food_has_no_value_for_is_not_complete() {
        Intake zinc = intake(Nutrient.ZINC);

        assertThat(zinc.complete()).isFalse();
        assertThat(zinc.standing()).isEqualTo(Standing.MAYBE_SHORT);
    }

    private static Intake intake(Nutrient nutrient) {
        var references = TestEater.of(EATER.body()).needs().references();
        return Intake.of(references, SESSION.averageDay(DAYS)).stream()
                .filter(i -> i.nutrient() == nutrient)
                .findFirst()
                .orElseThrow();
    }

    private static Part part(String name, Food food) {
        return new Part(
                name,
                false,
                5,
                false,
                50,
                300,
                List.of(new Ingredient(food, BigDecimal.valueOf(100), Optional.empty())));
    }

    private static Food food(
            String id, String calcium, String iron, String vitaminC, String vitaminD, String folate, String dfe) {
        var values = new EnumMap<Nutrient, BigDecimal>(Nutrient.class);
        values.put(Nutrient.CALCIUM, new BigDecimal(calcium));
        values.put(Nutrient.IRON, new BigDecimal(iron));
        values.put(Nutrient.VITAMIN_C, new BigDecimal(vitaminC));
        values.put(Nutrient.VITAMIN_D, new BigDecimal(vitaminD));
        values.put(Nutrient.FOLATE, new BigDecimal(folate));
        values.put(Nutrient.FOLATE_DFE, new BigDecimal(dfe));
        return new Food(id, id, "other", Optional.empty(), id, Nutrients.of(values), BigDecimal.ZERO, Set.of(), false);
    }
}
