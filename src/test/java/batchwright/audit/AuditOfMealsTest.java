package batchwright.audit;

import static batchwright.audit.LittlePlan.BANANA;
import static batchwright.audit.LittlePlan.BEN;
import static batchwright.audit.LittlePlan.BENS_SEAT;
import static batchwright.audit.LittlePlan.CHICKEN_RICE;
import static batchwright.audit.LittlePlan.EGG_POT;
import static batchwright.audit.LittlePlan.HANDFUL;
import static batchwright.audit.LittlePlan.MEDIUM_BANANA;
import static batchwright.audit.LittlePlan.PEANUTS;
import static batchwright.audit.LittlePlan.honest;
import static batchwright.audit.LittlePlan.request;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.limit.DayTarget;
import batchwright.limit.Limit;
import batchwright.limit.Range;
import batchwright.limit.Scope;
import batchwright.limit.TestTarget;
import batchwright.person.Meals;
import batchwright.person.TimesADay;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.plan.Variety;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * The little plan against boxes, meals and snack pairs. Worked out on paper: Ben's chicken and rice weighs 150 + 3 x 80 + 150 =
 * 540 g cooked and takes 540 / 1.03 = 524.3 ml; he has it six times, twice on days 3 and 4; the egg pot on days 1 and 2; each
 * day two bananas and one handful of peanuts.
 */
class AuditOfMealsTest {
    /** The honest plan was made for other targets and files, which are findings of their own and no matter here. */
    private static final Set<String> OF_OTHER_FILES = Set.of("eaters and days", "files of each session");

    /** 132 as the audit says of a limit below it; the egg pot is the denser dish. */
    private static final int EGG_POTS_KCAL_PER_100_G = 132;

    private static List<String> failed(PlanRequest asked) {
        return Audit.of(asked, honest()).checks().stream()
                .filter(check -> !check.passed() && !OF_OTHER_FILES.contains(check.rule()))
                .map(check -> check.rule() + ": " + check.detail())
                .toList();
    }

    private static PlanRequest ben(DayTarget target, Meals meals) {
        PlanRequest asked = request();
        var seat = new Seat(BEN.withWishes(BEN.wishes().with(meals)), target);
        return asked.withSeats(List.of(seat, asked.seats().get(1)));
    }

    private static PlanRequest ben(Meals meals) {
        return ben(BENS_SEAT.target(), meals);
    }

    private static PlanRequest atMost(Nutrient size, int most) {
        return besides(TestTarget.limit("box", Scope.CONTAINER, size).with(Range.atMost(most)));
    }

    private static PlanRequest besides(Limit limit) {
        List<Limit> limits = new ArrayList<>(BENS_SEAT.target().limits());
        limits.add(limit);
        return ben(new DayTarget(BENS_SEAT.target().energyAimKcal(), limits), Meals.USUAL);
    }

    @Test
    void a_container_weighs_what_is_cooked() {
        assertThat(failed(atMost(Nutrient.COOKED_WEIGHT, 540))).isEmpty();
        assertThat(failed(atMost(Nutrient.COOKED_WEIGHT, 539)))
                .containsExactly("box: a container of chicken_rice for ben: cooked weight 540 g, at most 539 g");
    }

    @Test
    void a_container_takes_its_room() {
        assertThat(failed(atMost(Nutrient.VOLUME, 525))).isEmpty();
        assertThat(failed(atMost(Nutrient.VOLUME, 524)))
                .singleElement()
                .asString()
                .startsWith("box: a container of chicken_rice for ben: volume 524.3 ml, at most 524 ml");
    }

    /** Energy of a container of chicken and rice by the plan's own figures, and 540 g. */
    @Test
    void a_container_is_as_dense_as_asked() {
        BigDecimal kcal = honest().batches().stream()
                .filter(batch -> batch.dish().equals(CHICKEN_RICE))
                .flatMap(batch -> batch.fills().stream())
                .filter(fill -> fill.isFor(BEN))
                .findFirst()
                .orElseThrow()
                .perContainer()
                .get(Nutrient.ENERGY);
        int per100g = kcal.multiply(BigDecimal.valueOf(100))
                .divide(BigDecimal.valueOf(540), 0, RoundingMode.FLOOR)
                .intValueExact();

        assertThat(failed(density(Range.between(per100g, EGG_POTS_KCAL_PER_100_G + 1))))
                .isEmpty();
        assertThat(failed(density(Range.atMost(per100g - 1))))
                .first()
                .asString()
                .startsWith("density: a container of chicken_rice for ben: energy ")
                .contains("kcal per 100 g, at most " + (per100g - 1) + " kcal per 100 g");
        assertThat(failed(density(Range.atLeast(per100g + 1)))).hasSize(1);
    }

    private static PlanRequest density(Range range) {
        return besides(
                TestTarget.limit("density", Scope.PER_100_G, Nutrient.ENERGY).with(range));
    }

    @Test
    void the_same_dish_twice_a_day() {
        assertThat(failed(ben(Meals.USUAL.withSameDish(1, OptionalInt.empty()))))
                .containsExactly("containers a day: ben, day 3: 2 containers of chicken_rice, at most 1; "
                        + "ben, day 4: 2 containers of chicken_rice, at most 1");
    }

    @Test
    void the_same_dish_in_all() {
        assertThat(failed(ben(Meals.USUAL.withSameDish(2, OptionalInt.of(6))))).isEmpty();
        assertThat(failed(ben(Meals.USUAL.withSameDish(2, OptionalInt.of(5)))))
                .containsExactly("meals: ben: 6 containers of chicken_rice in all, at most 5");
    }

    @Test
    void breakfasts() {
        assertThat(failed(potIsBreakfast(Meals.USUAL))).isEmpty();
        assertThat(failed(potIsBreakfast(Meals.USUAL.withBreakfasts(TimesADay.of(1, 1)))))
                .containsExactly("meals: ben, day 3: 0 breakfast dishes, from 1 to 1 were asked for; "
                        + "ben, day 4: 0 breakfast dishes, from 1 to 1 were asked for");
        assertThat(failed(potIsBreakfast(Meals.USUAL.withBreakfasts(TimesADay.of(0, 0)))))
                .hasSize(1);
    }

    /** Chicken and rice, for lunch or dinner, beside the pot on days 1 and 2 and by itself on days 3 and 4. */
    @Test
    void lunches_and_dinners() {
        var one = TimesADay.of(1, 1);
        assertThat(failed(potIs(Dish.Kind.DINNER, Meals.USUAL.withLunchesAndDinners(one, one))))
                .isEmpty();
        assertThat(failed(potIs(
                        Dish.Kind.LUNCH, Meals.USUAL.withLunchesAndDinners(TimesADay.of(0, 0), TimesADay.of(2, 2)))))
                .containsExactly(
                        "meals: ben, day 1: 1 lunch dishes, 0 dinner dishes and 1 for either, from 0 to 0 lunches "
                                + "and from 2 to 2 dinners were asked for; "
                                + "ben, day 2: 1 lunch dishes, 0 dinner dishes and 1 for either, from 0 to 0 lunches "
                                + "and from 2 to 2 dinners were asked for");
    }

    /** The plan cooks two dishes. */
    @Test
    void dishes_that_are_not_different_enough() {
        assertThat(failed(request().withVariety(new Variety(2, Set.of(EGG_POT)))))
                .isEmpty();
        assertThat(failed(request().withVariety(new Variety(3, Set.of()))))
                .containsExactly("dish count: 2 dishes are cooked, at least 3");
        assertThat(failed(request().withVariety(new Variety(1, Set.of(EGG_POT, CHICKEN_RICE)))))
                .containsExactly("dish count: 2 of last time's dishes are cooked again, at most 1");
    }

    private static PlanRequest potIsBreakfast(Meals meals) {
        return potIs(Dish.Kind.BREAKFAST, meals);
    }

    private static PlanRequest potIs(Dish.Kind kind, Meals meals) {
        PlanRequest asked = ben(meals);
        Map<String, Dish> dishes = new LinkedHashMap<>(asked.kitchen().dishes());
        dishes.put(
                EGG_POT.id(),
                new Dish(
                        EGG_POT.id(),
                        EGG_POT.name(),
                        kind,
                        EGG_POT.fridgeDays(),
                        EGG_POT.freezes(),
                        EGG_POT.reheat(),
                        EGG_POT.parts(),
                        List.of(),
                        List.of()));
        return asked.withKitchen(asked.kitchen().withDishes(dishes));
    }

    @Test
    void spreads_and_what_is_alike() {
        assertThat(failed(kinds("carrier", "spread"))).isEmpty();
        assertThat(failed(kinds("", "spread")))
                .singleElement()
                .asString()
                .contains("snack pairs: ben, day 1: 1 measures of spreads, and 0 to eat them on, each for two");
        assertThat(failed(kinds("fruit", "fruit")))
                .singleElement()
                .asString()
                .contains("snack pairs: ben, day 1: more than one snack of the kind fruit");
        PlanRequest any = kinds("fruit", "fruit");
        assertThat(failed(any.withSeats(ben(Meals.USUAL.withAnySnacks(true)).seats())))
                .isEmpty();
    }

    private static PlanRequest kinds(String banana, String peanuts) {
        PlanRequest asked = request();
        Kitchen k = asked.kitchen();
        Map<Food, List<Measure>> measures = new LinkedHashMap<>(k.measures());
        measures.put(BANANA, List.of(of(MEDIUM_BANANA, banana)));
        measures.put(PEANUTS, List.of(of(HANDFUL, peanuts)));
        return asked.withKitchen(new Kitchen(
                k.foods(), measures, k.yields(), k.packs(), k.dishes(), k.pantry(), k.currency(), k.cookingDay()));
    }

    private static Measure of(Measure m, String kind) {
        return new Measure(m.food(), m.name(), m.grams(), m.snackMost(), m.source(), kind);
    }
}
