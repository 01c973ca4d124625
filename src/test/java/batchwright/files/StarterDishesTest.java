package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.disk.StarterFiles;
import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.food.Shelves;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The starter dishes are meals over the whole range of every part, and there is something for many kinds of eaters.
 * Limits without a source are common practice of batch cooking.
 */
class StarterDishesTest {
    private static final Kitchen KITCHEN =
            KitchenReader.read(new StarterFiles(), FilesInMemory.DAY).value().orElseThrow();
    private static final Set<String> STARCH = Set.of("grain", "starchy_vegetable");
    private static final Set<String> FLESH = Set.of("meat", "fish");
    private static final Set<String> ANIMAL = Set.of("meat", "fish", "egg", "dairy", "protein_powder");

    /** How full a container is: every part at its least or at its most; optional parts in it or left out. */
    private record Fill(boolean most, boolean optional) {
        static final Fill SMALLEST = new Fill(false, false);
        static final Fill ALL_AT_LEAST = new Fill(false, true);
        static final Fill MOST_WITHOUT_OPTIONAL = new Fill(true, false);
        static final Fill LARGEST = new Fill(true, true);

        static List<Fill> corners() {
            return List.of(SMALLEST, ALL_AT_LEAST, MOST_WITHOUT_OPTIONAL, LARGEST);
        }

        double cookedGrams(Dish dish, Predicate<Part> which) {
            return sum(dish, which, Part::yieldFactor);
        }

        double of(Nutrient nutrient, Dish dish) {
            return sum(dish, part -> true, part -> part.per100g().get(nutrient).movePointLeft(2));
        }

        private double sum(Dish dish, Predicate<Part> which, Function<Part, BigDecimal> perGram) {
            return dish.parts().stream()
                    .filter(which)
                    .filter(part -> optional || !part.optional())
                    .mapToDouble(part -> (most ? part.mostGrams() : part.leastGrams())
                            * perGram.apply(part).doubleValue())
                    .sum();
        }
    }

    static Stream<Dish> dishes() {
        return KITCHEN.allDishes().stream();
    }

    static Stream<Dish> mains() {
        return dishes().filter(dish -> dish.kind() == Dish.Kind.MAIN);
    }

    private static boolean without(Dish dish, Set<String> groups) {
        return dish.foods().stream().map(Food::group).noneMatch(groups::contains);
    }

    private static boolean isStarch(Part part) {
        return part.shares().entrySet().stream()
                        .filter(share -> STARCH.contains(share.getKey().group()))
                        .mapToDouble(share -> share.getValue().doubleValue())
                        .sum()
                > 0.5;
    }

    @Test
    void there_is_something_for_many_kinds_of_eaters() {
        assertThat(KITCHEN.dishes()).hasSizeGreaterThanOrEqualTo(20);
        assertThat(dishes().filter(dish -> dish.kind() == Dish.Kind.BREAKFAST)).hasSizeGreaterThanOrEqualTo(5);
        assertThat(mains().filter(dish -> without(dish, FLESH)))
                .as("mains without meat or fish")
                .hasSizeGreaterThanOrEqualTo(4);
        assertThat(mains().filter(dish -> without(dish, ANIMAL))
                        .filter(dish -> dish.foods().stream()
                                .noneMatch(food -> food.id().equals("honey"))))
                .as("mains without anything from animals")
                .hasSizeGreaterThanOrEqualTo(2);
        assertThat(mains().filter(dish -> !without(dish, Set.of("fish"))))
                .as("mains with fish or seafood")
                .hasSizeGreaterThanOrEqualTo(3);
    }

    /** The allergens that shut out most dishes. */
    @Test
    void an_allergen_leaves_enough_to_cook() {
        for (Allergen allergen :
                List.of(Allergen.GLUTEN, Allergen.MILK, Allergen.SOY, Allergen.EGG, Allergen.TREE_NUT)) {
            assertThat(dishes().filter(dish -> !dish.allergens().contains(allergen)))
                    .as("without " + allergen.label())
                    .hasSizeGreaterThanOrEqualTo(5);
        }
    }

    /** Every staple of the starter dishes, looked through by hand: only mustard seeds are an allergen by law. */
    @Test
    void the_allergens_of_staples_count() {
        assertThat(dishes().flatMap(dish -> dish.staples().stream())
                        .filter(staple -> !staple.allergens().isEmpty())
                        .map(staple -> staple.name() + " " + staple.allergens())
                        .distinct())
                .containsExactly("mustard seeds [MUSTARD]");
        assertThat(dishes().filter(dish -> dish.id().equals("split_pea_dal")))
                .allSatisfy(dish -> assertThat(dish.allergens()).contains(Allergen.MUSTARD))
                .hasSize(1);
    }

    @Test
    void the_starches_differ() {
        assertThat(mains().flatMap(dish -> dish.parts().stream())
                        .filter(StarterDishesTest::isStarch)
                        .flatMap(part -> part.mix().stream())
                        .map(ingredient -> ingredient.food().id())
                        .distinct())
                .hasSizeGreaterThanOrEqualTo(10);
    }

    /** A large box of about 1.2 litres holds 1 kg; less than 200 g is a snack. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("dishes")
    void every_container_fits_a_box_and_is_neither_watery_nor_pure_fat(Dish dish) {
        for (Fill fill : Fill.corners()) {
            double grams = fill.cookedGrams(dish, part -> true);
            assertThat(grams).as("cooked g, %s", fill).isBetween(200.0, 1000.0);
            assertThat(fill.of(Nutrient.ENERGY, dish) / grams)
                    .as("kcal in a cooked g, %s", fill)
                    .isBetween(0.5, 3.0);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("dishes")
    void a_container_can_be_small_and_can_be_large(Dish dish) {
        assertThat(Fill.SMALLEST.of(Nutrient.ENERGY, dish)).isLessThan(500);
        double largest = Fill.LARGEST.of(Nutrient.ENERGY, dish);
        switch (KITCHEN.shelves().shelfOf(dish).orElse(Shelves.EVERYDAY)) {
            case "big" -> assertThat(largest).isBetween(1200.0, 1600.0);
            case "light" -> assertThat(largest).isBetween(400.0, 800.0);
            default -> assertThat(largest).isBetween(800.0, 1200.0);
        }
    }

    /** Whom a shelf is for, by what is in its dishes and how they are cooked; 0.7 kcal/g is what the shelf promises, our choice. */
    @Test
    void a_shelf_holds_what_it_says() {
        assertThat(KITCHEN.shelves().names()).containsExactly("big", "light", "no_cook", "soups", "vegan");
        assertThat(KITCHEN.shelves().on("vegan"))
                .allSatisfy(dish -> assertThat(without(dish, ANIMAL)).isTrue())
                .allSatisfy(
                        dish -> assertThat(dish.foods().stream().map(Food::id)).doesNotContain("honey"));
        assertThat(KITCHEN.shelves().on("no_cook"))
                .allSatisfy(dish -> assertThat(dish.steps())
                        .allSatisfy(step -> assertThat(step.way().on()).isEmpty()));
        assertThat(KITCHEN.shelves().on("light"))
                .allSatisfy(dish -> assertThat(Fill.MOST_WITHOUT_OPTIONAL.of(Nutrient.ENERGY, dish)
                                / Fill.MOST_WITHOUT_OPTIONAL.cookedGrams(dish, part -> true))
                        .isLessThan(0.7));
    }

    /** 20 g is what an eater of 80 kg needs in a container: 0.25 g per kg (docs/science.md). */
    @ParameterizedTest(name = "{0}")
    @MethodSource("mains")
    void a_main_feeds_protein_with_and_without_its_optional_parts(Dish dish) {
        double middle = (Fill.ALL_AT_LEAST.of(Nutrient.PROTEIN, dish) + Fill.LARGEST.of(Nutrient.PROTEIN, dish)) / 2;

        assertThat(middle).isBetween(25.0, 60.0);
        assertThat(Fill.MOST_WITHOUT_OPTIONAL.of(Nutrient.PROTEIN, dish)).isGreaterThanOrEqualTo(20);
    }

    /** A portion is 80 g: five of them are the 400 g a day of the World Health Organization. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("dishes")
    void the_smallest_container_holds_a_portion_of_fruit_or_vegetables(Dish dish) {
        assertThat(Math.round(Fill.SMALLEST.of(Nutrient.FRUIT_VEG, dish))).isGreaterThanOrEqualTo(80);
    }

    /** The dry end of the ranges, most starch with the least of all else: beyond 2.5 to 1 cooked it is plain grain. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("mains")
    void there_is_never_too_little_beside_the_starch(Dish dish) {
        double starch = Fill.LARGEST.cookedGrams(dish, StarterDishesTest::isStarch);
        double rest = Fill.SMALLEST.cookedGrams(dish, part -> !isStarch(part));

        assertThat(starch / rest).isLessThanOrEqualTo(2.5);
    }
}
