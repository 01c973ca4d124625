package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.disk.StarterFiles;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.food.Part;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The starter files are enough to plan with: foods, dishes, packs and eaters that fit together. */
class StarterKitchenTest {
    private static final StarterFiles STARTER = new StarterFiles();
    private static final Kitchen KITCHEN =
            KitchenReader.read(STARTER, FilesInMemory.DAY).value().orElseThrow();

    /** Makers and chains that sell such food in the USA; from memory, a net with holes. */
    private static final List<String> TRADE_NAMES = List.of(
            "kellogg",
            "quaker",
            "kraft",
            "heinz",
            "nestle",
            "barilla",
            "chobani",
            "fage",
            "dannon",
            "danone",
            "silk",
            "oikos",
            "cheerios",
            "hellmann",
            "skippy",
            "jif",
            "philadelphia",
            "campbell",
            "hunt's",
            "goya",
            "del monte",
            "dole",
            "tyson",
            "perdue",
            "hormel",
            "oscar mayer",
            "costco",
            "kirkland",
            "walmart",
            "kroger",
            "aldi",
            "lidl",
            "trader joe",
            "whole foods",
            "safeway",
            "tesco",
            "nasoya",
            "vitasoy",
            "house foods",
            "morningstar",
            "general mills",
            "pillsbury",
            "betty crocker",
            "uncle ben",
            "ben's original",
            "sriracha",
            "tabasco",
            "kikkoman");

    static Stream<Dish> dishes() {
        return KITCHEN.dishes().values().stream();
    }

    @Test
    void there_is_enough_to_choose_from() {
        assertThat(KITCHEN.foods()).hasSizeGreaterThanOrEqualTo(90);
        assertThat(KITCHEN.dishes()).hasSizeGreaterThanOrEqualTo(8);
        assertThat(FoundIn.paths(STARTER.list("profiles")).stream().filter(path -> path.endsWith(".yaml")))
                .hasSize(3);
    }

    /** Some dish can leave a part out for an eater who needs less. */
    @Test
    void at_least_three_dishes_have_an_optional_part() {
        assertThat(dishes().filter(dish -> dish.parts().stream().anyMatch(Part::optional)))
                .hasSizeGreaterThanOrEqualTo(3);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("dishes")
    void every_food_of_a_dish_is_sold(Dish dish) {
        assertThat(dish.foods())
                .allSatisfy(
                        food -> assertThat(KITCHEN.packsOf(food)).as(food.id()).isNotEmpty());
    }

    /** A method that is named changes the weight as yields.csv says for that food. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("dishes")
    void every_cooking_method_is_one_of_the_food_s_yields(Dish dish) {
        dish.parts().stream()
                .flatMap(part -> part.mix().stream())
                .filter(ingredient -> ingredient.cooked().isPresent())
                .forEach(ingredient -> assertThat(KITCHEN.yields().getOrDefault(ingredient.food(), List.of()))
                        .as(ingredient.food().id())
                        .contains(ingredient.cooked().orElseThrow()));
    }

    /** A dish half way between its least and its most is a meal: 350-1100 kcal, common practice for batch cooking. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("dishes")
    void the_middle_container_is_a_meal(Dish dish) {
        double kcal = dish.parts().stream()
                .map(part -> part.per100g().ofGrams(middle(part)))
                .reduce(Nutrients.NONE, Nutrients::plus)
                .get(Nutrient.ENERGY)
                .doubleValue();

        assertThat(kcal).isBetween(350.0, 1100.0);
    }

    private static BigDecimal middle(Part part) {
        return BigDecimal.valueOf(part.leastGrams() + part.mostGrams()).divide(BigDecimal.valueOf(2));
    }

    @Test
    void no_file_names_a_maker_or_a_shop() {
        for (String path : STARTER.paths()) {
            String text =
                    String.join("\n", FoundIn.there(STARTER.read(path)).lines()).toLowerCase(Locale.ROOT);
            assertThat(TRADE_NAMES.stream().filter(name -> text.matches("(?s).*\\b" + name + "\\b.*")))
                    .as(path)
                    .isEmpty();
        }
    }
}
