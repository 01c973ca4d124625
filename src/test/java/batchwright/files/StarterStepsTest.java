package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.disk.StarterFiles;
import batchwright.food.Appliance;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.HandTimes;
import batchwright.food.Handled;
import batchwright.food.Ingredient;
import batchwright.food.Staple;
import batchwright.food.Step;
import batchwright.food.TimeLaw;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The steps of the starter dishes can be followed, season the food, and cook and keep it safely. */
class StarterStepsTest {
    /** Cooked when it is bought. */
    private static final Set<String> READY = Set.of("ham", "canned_tuna", "canned_salmon", "sardines");

    /** What separates, weeps or turns limp when it thaws: common practice. */
    private static final Set<String> NEVER_FROZEN = Set.of("greek_yogurt", "whole_yogurt", "cucumber", "romaine");

    private static final Set<String> SOAKED =
            Set.of("black_beans", "kidney_beans", "pinto_beans", "white_beans", "chickpeas");

    private static final int AN_HOUR = 60;

    static Stream<Dish> dishes() {
        return KitchenReader.read(new StarterFiles(), FilesInMemory.DAY).value().orElseThrow().allDishes().stream();
    }

    static Stream<Dish> mains() {
        return dishes().filter(dish -> dish.kind() == Dish.Kind.MAIN);
    }

    private static Stream<Ingredient> ingredients(Dish dish) {
        return dish.parts().stream().flatMap(part -> part.mix().stream());
    }

    private static boolean anyStep(Dish dish, Appliance appliance) {
        return dish.steps().stream().anyMatch(step -> step.way().uses(appliance));
    }

    private static boolean cookedBy(Dish dish, String... methods) {
        return ingredients(dish)
                .flatMap(ingredient -> ingredient.cooked().stream())
                .anyMatch(cooked -> List.of(methods).contains(cooked.method()));
    }

    @Test
    void some_dishes_need_the_oven_and_some_do_not() {
        assertThat(dishes().filter(dish -> anyStep(dish, Appliance.OVEN))).hasSizeGreaterThanOrEqualTo(6);
        assertThat(dishes().filter(dish -> !anyStep(dish, Appliance.OVEN))).hasSizeGreaterThanOrEqualTo(6);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("dishes")
    void cooking_methods_and_steps_agree(Dish dish) {
        assertThat(anyStep(dish, Appliance.OVEN)).as("oven").isEqualTo(cookedBy(dish, "roasted", "baked"));
        assertThat(!cookedBy(dish, "boiled", "fried") || anyStep(dish, Appliance.BURNER))
                .as("burner")
                .isTrue();
    }

    /** From drying out slowly to the hottest that home ovens reach and lined tins bear. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("dishes")
    void ovens_are_neither_lukewarm_nor_on_fire(Dish dish) {
        assertThat(dish.steps())
                .allSatisfy(step -> step.way()
                        .celsius()
                        .ifPresent(celsius -> assertThat(celsius).isBetween(140, 250)));
    }

    /** Every step of the cooking day follows a law, so that portioning and washing-up are counted and no batch is guessed. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("dishes")
    void every_step_says_how_its_minutes_grow(Dish dish) {
        assertThat(HandTimes.areCounted(dish)).isTrue();
    }

    /** Every food and every staple goes into some step: a doubt of check, so that the starter files are silent. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("dishes")
    void every_staple_goes_into_a_step(Dish dish) {
        List<Staple> handled = dish.steps().stream()
                .flatMap(step -> step.with().stream())
                .filter(Handled.OfStaple.class::isInstance)
                .map(h -> ((Handled.OfStaple) h).staple())
                .toList();

        assertThat(handled).containsAll(dish.staples());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("dishes")
    void a_step_that_fills_containers_comes_after_all_that_is_cooked(Dish dish) {
        List<Step> steps = dish.steps();
        for (int number = 1; number <= steps.size(); number++) {
            if (steps.get(number - 1).fills()) {
                var before = new TreeSet<Integer>();
                gather(steps, number, before);
                for (int other = 1; other < number; other++) {
                    assertThat(before).as("step " + number + " follows").contains(other);
                }
            }
        }
    }

    private static void gather(List<Step> steps, int number, Set<Integer> before) {
        for (int earlier : steps.get(number - 1).after()) {
            before.add(earlier);
            gather(steps, earlier, before);
        }
    }

    /** Dry beans and chickpeas are soaked overnight (common practice); lentils and split peas are not. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("dishes")
    void what_is_soaked_overnight_says_so(Dish dish) {
        boolean soaks = dish.foods().stream().map(Food::id).anyMatch(SOAKED::contains);

        assertThat(dish.steps().stream().anyMatch(Step::dayBefore)).isEqualTo(soaks);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mains")
    void a_main_is_salted_spiced_and_has_something_sharp(Dish dish) {
        List<String> tastes = Stream.concat(
                        dish.staples().stream().map(Staple::name),
                        dish.foods().stream().map(Food::id))
                .toList();

        assertThat(tastes).as("salt").containsAnyOf("salt", "soy_sauce");
        assertThat(tastes).as("aroma").containsAnyOf("onion", "garlic", "ginger");
        assertThat(tastes).as("acid").containsAnyOf("vinegar", "rice vinegar", "lemon_juice", "crushed_tomatoes");
        assertThat(dish.staples()).as("herbs and spices besides salt").hasSizeGreaterThanOrEqualTo(2);
    }

    /**
     * Safe minimum internal temperatures of the US Department of Agriculture, Food Safety and Inspection Service (from
     * memory): poultry 74 C, minced meat and egg dishes 71 C, whole cuts and fish 63 C. Stew meat simmers for an hour.
     */
    @ParameterizedTest(name = "{0}")
    @MethodSource("dishes")
    void a_step_names_the_safe_temperature_of_what_is_raw(Dish dish) {
        String text = String.join(" ", dish.steps().stream().map(Step::text).toList());

        assertThat(ingredients(dish)
                        .filter(ingredient -> !isBoiledEgg(ingredient))
                        .map(Ingredient::food))
                .allSatisfy(food -> safeCelsius(food)
                        .filter(celsius -> celsius > 63 || !simmersAnHour(dish))
                        .ifPresent(celsius -> assertThat(text).as(food.id()).contains(celsius + " C (")));
    }

    private static Optional<Integer> safeCelsius(Food food) {
        String id = food.id();
        if (READY.contains(id)) {
            return Optional.empty();
        }
        return switch (food.group()) {
            case "egg" -> Optional.of(71);
            case "fish" -> Optional.of(63);
            case "meat" -> Optional.of(id.matches(".*(chicken|turkey).*") ? 74 : id.contains("ground") ? 71 : 63);
            default -> Optional.empty();
        };
    }

    private static boolean isBoiledEgg(Ingredient ingredient) {
        return ingredient.food().id().equals("egg")
                && ingredient
                        .cooked()
                        .filter(cooked -> cooked.method().equals("boiled"))
                        .isPresent();
    }

    private static boolean isRoastPotato(Ingredient ingredient) {
        return ingredient.food().id().equals("potato")
                && ingredient
                        .cooked()
                        .filter(cooked -> cooked.method().equals("roasted"))
                        .isPresent();
    }

    private static boolean simmersAnHour(Dish dish) {
        return dish.steps().stream()
                .anyMatch(step -> step.text().contains("immer")
                        && step.way().uses(Appliance.BURNER)
                        && step.way().laws().stream()
                                .anyMatch(
                                        law -> law instanceof TimeLaw.ByItself itself && itself.minutes() >= AN_HOUR));
    }

    /** Leftovers keep 3 to 4 days in the fridge (USDA FSIS); fish is held to the shorter end. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("dishes")
    void it_keeps_no_longer_than_advised(Dish dish) {
        boolean fish = dish.foods().stream().anyMatch(food -> food.group().equals("fish"));

        assertThat(dish.fridgeDays()).isLessThanOrEqualTo(fish ? 3 : 4);
        boolean heated = dish.steps().stream().anyMatch(step -> step.way().on().isPresent());
        assertThat(dish.reheat()).contains(heated || dish.kind() == Dish.Kind.BREAKFAST ? "74 C (165 F)" : "Eat cold");
    }

    /** Roast potatoes turn mealy, whites of hard-boiled eggs rubbery, sour cream curdles: common practice. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("dishes")
    void what_suffers_cooked_does_not_go_there_either(Dish dish) {
        boolean suffers = ingredients(dish).anyMatch(i -> isBoiledEgg(i) || isRoastPotato(i));
        String text = String.join(" ", dish.steps().stream().map(Step::text).toList());

        assertThat(dish.freezes() && suffers).isFalse();
        if (dish.freezes() && dish.foods().stream().anyMatch(food -> food.id().equals("sour_cream"))) {
            assertThat(text).contains("sour cream in small cups for the fridge");
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("dishes")
    void what_suffers_in_the_freezer_does_not_go_there(Dish dish) {
        assertThat(dish.freezes() && dish.foods().stream().map(Food::id).anyMatch(NEVER_FROZEN::contains))
                .isFalse();
    }
}
