package batchwright.explain;

import static batchwright.explain.LittleKitchen.BAR;
import static batchwright.explain.LittleKitchen.CURRY;
import static batchwright.explain.LittleKitchen.EASY;
import static batchwright.explain.LittleKitchen.STEW;
import static batchwright.explain.LittleKitchen.TWO_BOXES;
import static batchwright.explain.LittleKitchen.request;
import static batchwright.explain.LittleKitchen.seat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.limit.Range;
import batchwright.limit.Scope;
import batchwright.limit.Setting;
import batchwright.limit.TestTarget;
import batchwright.person.Meals;
import batchwright.person.TimesADay;
import batchwright.person.Wishes;
import batchwright.plan.Clash;
import batchwright.plan.PlanRequest;
import batchwright.plan.Proof;
import batchwright.plan.Variety;
import batchwright.report.print.RemedyText;
import batchwright.solve.BatchPlanner;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Boxes, meals and snack pairs in a clash, with what cures them; worked out on paper. */
class MealsClashTest {
    private static List<Clash> clashes(PlanRequest asked) {
        return new ClashFinder(new BatchPlanner(), Duration.ofSeconds(20))
                .clashes(asked, Proof.NONE)
                .all();
    }

    private static PlanRequest meals(Dish dish, Meals meals) {
        return request(2, 3, List.of(dish), seat("ann", TWO_BOXES.with(meals), EASY));
    }

    /** Two boxes of 300 g are 600 kcal, and 690 are wanted; a step is 5 g, so two of 345 g are the least. */
    @Test
    void a_box_that_is_too_small() {
        var box = TestTarget.limit("container weight", Scope.CONTAINER, Nutrient.COOKED_WEIGHT)
                .with(Range.atMost(300))
                .changedBy(new Setting.AtMost("container_weight", "g", 2000));

        List<Clash> clashes = clashes(request(EASY.and(box)));

        assertThat(clashes)
                .extracting(Clash::rule, Clash::says, Clash::cure)
                .contains(tuple(
                        "container weight",
                        "each container of Ann holds at most 300 g of cooked weight",
                        "raise it to 345 g"));
        assertThat(clashes)
                .filteredOn(clash -> clash.rule().equals("container weight"))
                .flatExtracting(
                        clash -> clash.remedy().stream().map(RemedyText::of).toList())
                .containsExactly("container_weight: 345 g under target, in profiles/ann.yaml");
    }

    /** Whatever its size, 100 g of stew are 100 kcal. */
    @Test
    void food_that_is_not_dense_enough() {
        var density = TestTarget.limit("energy density", Scope.PER_100_G, Nutrient.ENERGY)
                .with(Range.between(130, 160))
                .changedBy(new Setting.Between("container_density", "kcal per 100 g", 900));

        List<Clash> clashes = clashes(request(EASY.and(density)));

        assertThat(clashes)
                .extracting(Clash::rule, Clash::says, Clash::cure)
                .containsExactly(tuple(
                        "energy density",
                        "each container of Ann holds 130 to 160 kcal per 100 g",
                        "widen it to 100 to 160 kcal per 100 g"));
        assertThat(clashes)
                .flatExtracting(
                        clash -> clash.remedy().stream().map(RemedyText::of).toList())
                .containsExactly("container_density: 100 to 160 kcal per 100 g under target, in profiles/ann.yaml");
    }

    @Test
    void nothing_but_a_breakfast_dish() {
        Dish porridge = new Dish(
                "stew", "stew", Dish.Kind.BREAKFAST, 4, true, STEW.reheat(), STEW.parts(), List.of(), List.of());

        assertThat(clashes(meals(porridge, Meals.USUAL)))
                .extracting(Clash::rule, Clash::says, Clash::cure)
                .containsExactly(tuple(
                        "meals",
                        "Ann has at most 1 breakfast a day, and breakfast dishes for nothing else",
                        "ask for at most 2 breakfasts a day"));
    }

    /** Two days of two containers are no more than two batches of two, and there are two dishes. */
    @Test
    void too_many_dishes_asked_for() {
        PlanRequest asked = request(2, 3, List.of(STEW, CURRY), seat("ann", TWO_BOXES, EASY));

        List<Clash> clashes = clashes(asked.withVariety(new Variety(3, Set.of())));
        assertThat(clashes)
                .extracting(Clash::rule, Clash::says, Clash::cure)
                .containsExactly(tuple(
                        "dish count",
                        "at least 3 dishes are cooked, each for at least 2 containers",
                        "ask for at least 2 dishes"));
        assertThat(clashes)
                .flatExtracting(
                        clash -> clash.remedy().stream().map(RemedyText::of).toList())
                .containsExactly("a smaller first number in --dishes: 2");
    }

    /** A dish at most twice in all, so both must be cooked, and both were last time. */
    @Test
    void nothing_but_dishes_of_last_time() {
        Wishes twice = TWO_BOXES.with(Meals.USUAL.withSameDish(2, OptionalInt.of(2)));
        PlanRequest asked = request(2, 3, List.of(STEW, CURRY), seat("ann", twice, EASY));

        assertThat(new BatchPlanner().plan(asked).best()).isPresent();
        assertThat(clashes(asked.withVariety(new Variety(1, Set.of(STEW, CURRY)))))
                .extracting(Clash::rule, Clash::cure)
                .contains(tuple("dish count", "allow all of them again"));
    }

    /** Two containers of a stew that is a dinner, and one dinner a day when nothing is said. */
    @Test
    void nothing_but_a_dinner_dish() {
        Dish dinner =
                new Dish("stew", "stew", Dish.Kind.DINNER, 4, true, STEW.reheat(), STEW.parts(), List.of(), List.of());

        List<Clash> clashes = clashes(meals(dinner, Meals.USUAL));

        assertThat(clashes)
                .extracting(Clash::rule, Clash::says, Clash::cure)
                .containsExactly(tuple(
                        "meals",
                        "Ann has at most 1 dinner a day, and dinner dishes for nothing else",
                        "ask for at most 2 dinners a day"));
        assertThat(clashes)
                .flatExtracting(
                        clash -> clash.remedy().stream().map(RemedyText::of).toList())
                .containsExactly("dinners_a_day: 0 to 2 in profiles/ann.yaml");
    }

    @Test
    void no_breakfast_dish() {
        assertThat(clashes(meals(STEW, Meals.USUAL.withBreakfasts(TimesADay.of(1, 1)))))
                .extracting(Clash::rule, Clash::cure)
                .containsExactly(tuple("meals", "ask for at most 1 breakfast a day"));
    }

    @Test
    void the_same_dish_too_often() {
        assertThat(clashes(meals(STEW, Meals.USUAL.withSameDish(1, OptionalInt.empty()))))
                .extracting(Clash::rule, Clash::says, Clash::cure)
                .containsExactly(
                        tuple("same dish", "Ann gets the same dish at most 1 time a day", "allow it 2 times a day"));
        assertThat(clashes(meals(STEW, Meals.USUAL.withSameDish(2, OptionalInt.of(3)))))
                .extracting(Clash::rule, Clash::cure)
                .containsExactly(tuple("same dish", "allow it 4 times in all"));
    }

    /** Two boxes hold at most 800 kcal; a bar is 60 kcal. As a spread it needs a carrier, and there is none. */
    @Test
    void a_spread_with_nothing_to_eat_it_on() {
        Wishes wishes = TWO_BOXES.withSnacks(TWO_BOXES.snackFoods(), 1, 1);
        PlanRequest asked = request(2, 3, List.of(STEW), seat("ann", wishes, TestTarget.energy(855, 850, 870)));
        Kitchen k = asked.kitchen();
        var bar = new Measure(BAR, "piece", BigDecimal.valueOf(100), 3, "invented", Measure.SPREAD);
        PlanRequest spread = asked.withKitchen(new Kitchen(
                k.foods(),
                Map.of(BAR, List.of(bar)),
                k.yields(),
                k.packs(),
                k.dishes(),
                k.pantry(),
                k.currency(),
                k.cookingDay()));

        assertThat(new BatchPlanner().plan(asked).best()).isPresent();
        assertThat(clashes(spread))
                .extracting(Clash::rule, Clash::cure)
                .contains(tuple("snack pairs", "allow any snacks on one day"));
    }
}
