package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.Audit;
import batchwright.food.Contents;
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
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Purchase;
import batchwright.plan.Seat;
import batchwright.plan.UseUp;
import batchwright.quantity.Currency;
import batchwright.quantity.Length;
import batchwright.quantity.Mass;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Dates, loose goods and multipacks on paper. One food of 1 kcal a gram and nothing else: a container is 200 to 300 g of it, a
 * snack is 100 g; one container a day for two days.
 */
class ShopAndPantryCasesTest {
    private static final LocalDate COOKING_DAY = LocalDate.of(2026, 1, 12);
    private static final Food SOUP = new Food(
            "soup",
            "soup",
            "other",
            Optional.empty(),
            "invented",
            Nutrients.of(Map.of(Nutrient.ENERGY, BigDecimal.valueOf(100))),
            BigDecimal.ZERO,
            Set.of(),
            false);

    /**
     * 300 kcal a day and at most 200 in a container: 400 g are cooked and 200 g are snacks. 600 g are at home, a pack is 150 g.
     * Past their date nothing of them counts, 4 packs; when they spoil on day 1 the snacks must be bought, 2 packs.
     */
    @ParameterizedTest(name = "to be used by day {0}: costs {1}, {2} g to use up")
    @CsvSource({"0, 400, 0", "1, 200, 200", "2, 0, 0", "3, 0, 0"})
    void what_spoils_before_the_last_day_is_cooked_and_is_no_snack(int day, long minor, int useUp) {
        var lot = new Lot(BigDecimal.valueOf(600), Optional.of(COOKING_DAY.plusDays(day - 1L)));
        PlanRequest request =
                request(TestTarget.energy(300, 300, 300).container(0, 200).target(), lot, pack(150, 100));

        Plan plan = plan(request);

        assertThat(plan.cost()).isEqualTo(new Money(minor));
        assertThat(BruteForce.leastCost(request)).hasValue(minor);
        assertThat(UseUp.of(plan.first()).stream()
                        .mapToInt(left -> left.grams().intValueExact())
                        .sum())
                .isEqualTo(useUp);
    }

    /** The same with 50 g more that keep: 400 g that spoil are cooked, the 50 g and a pack of 150 g are the snacks. */
    @Test
    void what_keeps_is_for_snacks_when_the_rest_spoils() {
        var spoils = new Lot(BigDecimal.valueOf(600), Optional.of(COOKING_DAY));
        PlanRequest request = Variants.pantry(
                request(TestTarget.energy(300, 300, 300).container(0, 200).target(), spoils, pack(150, 100)), SOUP, 50);

        Plan plan = plan(request);

        assertThat(plan.cost()).isEqualTo(new Money(100));
        assertThat(plan.first().purchase(SOUP).orElseThrow().fromPantryGrams()).isEqualByComparingTo("450");
    }

    /** Every plan costs nothing; the one that leaves least of what spoils fills the containers. */
    @Test
    void between_plans_of_equal_cost_what_spoils_is_used_up() {
        var lot = new Lot(BigDecimal.valueOf(900), Optional.of(COOKING_DAY));
        var target = TestTarget.energy(250, 200, 300).target();

        Plan plan = plan(request(target, lot, pack(150, 100)));

        assertThat(plan.cost()).isEqualTo(Money.ZERO);
        assertThat(plan.batches().get(0).ingredients().get(SOUP)).isEqualByComparingTo("600");
    }

    /** 430 g or more are to be cooked. 1.99 for 1000 g is 0.20 for 100 g: five steps cost 1.00. */
    @ParameterizedTest(name = "500 g in a pack for {0}: costs {1}, loose: {2}")
    @CsvSource({"101, 100, true", "100, 100, true", "99, 99, false"})
    void loose_goods_beside_packs(long packMinor, long minor, boolean loose) {
        var target = TestTarget.energy(220, 215, 225).target();
        Pack byWeight = pack(1000, 199).looseBy(BigDecimal.valueOf(100));

        Plan plan = plan(request(target, Lot.of(BigDecimal.ZERO), byWeight, pack(500, packMinor)));

        assertThat(plan.cost()).isEqualTo(new Money(minor));
        Purchase bought = plan.first().purchase(SOUP).orElseThrow();
        assertThat(bought.packs().keySet())
                .singleElement()
                .extracting(Pack::isLoose)
                .isEqualTo(loose);
        assertThat(bought.boughtGrams()).isEqualByComparingTo("500");
    }

    /** 400 g are cooked. Three cans of 200 g, 140 g drained, are 420 g; they are sold together only. */
    @Test
    void a_multipack_is_bought_whole() {
        var target = TestTarget.energy(200, 200, 200).target();
        var cans = new Contents(3, BigDecimal.valueOf(200), Optional.of(BigDecimal.valueOf(140)));
        Pack three = new Pack(SOUP, "shop", "three cans", cans, new Money(250), Optional.empty(), COOKING_DAY, "");

        Purchase bought = plan(request(target, Lot.of(BigDecimal.ZERO), three))
                .first()
                .purchase(SOUP)
                .orElseThrow();

        assertThat(bought.packs()).containsExactly(Map.entry(three, 1));
        assertThat(bought.leftGrams()).isEqualByComparingTo("20");
    }

    private static Plan plan(PlanRequest request) {
        Plan plan = new BatchPlanner().plan(request).best().orElseThrow();
        assertThat(Audit.of(request, plan).checks()).allMatch(check -> check.passed());
        return plan;
    }

    private static PlanRequest request(DayTarget target, Lot lot, Pack... packs) {
        Part part = new Part(
                "all", false, 5, false, 200, 300, List.of(new Ingredient(SOUP, BigDecimal.TEN, Optional.empty())));
        Dish dish = new Dish(
                "dish", "dish", Dish.Kind.MAIN, 3, true, "Until steaming.", List.of(part), List.of(), List.of());
        var kitchen = new Kitchen(
                Map.of(SOUP.id(), SOUP),
                Map.of(SOUP, List.of(new Measure(SOUP, "bowl", BigDecimal.valueOf(100), 1, "invented"))),
                Map.of(),
                Map.of(SOUP, List.of(packs)),
                Map.of(dish.id(), dish),
                Map.of(SOUP, List.of(lot)),
                Currency.USD,
                COOKING_DAY);
        var wishes = new Wishes(1, Avoided.NOTHING, List.of(), Optional.empty(), 1, 1);
        var eater = new Eater(
                "eater",
                "eater",
                new Body(Sex.MALE, 30, new Mass(75), new Length(175), Optional.empty()),
                new PalNumber(1.6),
                Goal.HOLD,
                Health.NOT_SAID,
                Adjustments.NONE,
                wishes);
        return new PlanRequest(
                kitchen, List.of(new Seat(eater, target)), 2, Optional.empty(), 1, Duration.ofSeconds(30));
    }

    private static Pack pack(int grams, long minor) {
        return new Pack(SOUP, "shop", grams + " g", BigDecimal.valueOf(grams), new Money(minor), COOKING_DAY, "");
    }
}
