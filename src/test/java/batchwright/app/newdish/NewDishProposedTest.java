package batchwright.app.newdish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.app.Workspace;
import batchwright.app.WriteStarterFiles;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Kitchen;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a cook types is what the dish holds, whatever the foods; the usual reader takes every page that is proposed. */
class NewDishProposedTest {
    private static Kitchen kitchen;
    private static NewDish dishes;

    @BeforeAll
    static void open(@TempDir Path folder) {
        new WriteStarterFiles().into(folder);
        var workspace = Workspace.open(Optional.of(folder), folder, LocalDate.of(2026, 11, 30), note -> {});
        kitchen = workspace.kitchen();
        dishes = new NewDish(workspace, kitchen);
    }

    /**
     * Grams beside common kitchen measures are those of USDA SR28, WEIGHT table, read there: egg large 50 (01123), onion medium 110 (11282),
     * olive oil tablespoon 13.5 (04053), garlic clove 3 (11215), banana medium 118 (09040), milk cup 244 (01077), olive oil cup 216; a US cup is 236.588 ml (NIST Handbook 44); pound and ounce: the agreement of 1959.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "500 g brown rice|brown_rice|500",
                "1/2 kg of brown rice|brown_rice|500",
                "1,5 kg potatoes|potato|1500",
                "2 lb chicken breast|chicken_breast|907.2",
                "1 1/2 lbs chicken breast|chicken_breast|680.4",
                "12 oz pasta|pasta|340.2",
                "3 onions|onion|330",
                "6 large eggs|egg|300",
                "2 tbsp olive oil|olive_oil|27",
                "2 Tablespoons olive oil|olive_oil|27",
                "½ tbsp olive oil|olive_oil|6.8",
                "4 cloves garlic|garlic|12",
                "2 x banana|banana|236",
                "250g cheddar cheese|cheddar|250",
                "500 ml whole milk|whole_milk|515.7",
                "1 dl olive oil|olive_oil|91.3",
                "400 g red_lentils|red_lentils|400"
            })
    void amounts_as_cooks_write_them(String typed, String food, double grams) {
        assertThat(dishes.line(typed)).isInstanceOfSatisfying(BatchLine.Mixed.class, line -> {
            assertThat(line.food().id()).isEqualTo(food);
            assertThat(line.grams().doubleValue()).isCloseTo(grams, within(0.06));
        });
    }

    /** Spoons of spices: USDA SR28, WEIGHT table: ground coriander is not in our tables; leaf coriander 1 tsp 0.6 g (02012), cumin seed 1 tsp 2.1 g (02014). */
    @Test
    void seasonings_are_always_at_home() {
        assertThat(dishes.line("12 g salt")).isInstanceOfSatisfying(BatchLine.Seasoning.class, line -> {
            assertThat(line.name()).isEqualTo("salt");
            assertThat(line.grams().orElseThrow().doubleValue()).isEqualTo(12);
        });
        assertThat(dishes.line("2 tsp cumin seeds"))
                .isInstanceOfSatisfying(
                        BatchLine.Seasoning.class,
                        line -> assertThat(line.grams().orElseThrow().doubleValue())
                                .isCloseTo(4.2, within(0.01)));
        assertThat(dishes.line("salt")).isEqualTo(new BatchLine.Seasoning("salt", Optional.empty()));
        assertThat(dishes.line("rice")).isInstanceOf(BatchLine.Wrong.class);
    }

    @Test
    void keeping_by_the_riskiest() {
        assertThat(keeps("800 g salmon", "400 g couscous").fridgeDays()).isEqualTo(3);
        assertThat(keeps("800 g potatoes", "600 g ground beef")).satisfies(dish -> {
            assertThat(dish.fridgeDays()).isEqualTo(4);
            assertThat(dish.freezes()).isFalse();
        });
        assertThat(keeps("400 g lentils", "500 g tomatoes").freezes()).isTrue();
    }

    @Test
    void salt_typed_twice_is_added_up() {
        Dish dish = keeps("400 g lentils", "4 g salt", "6 g salt");
        assertThat(dish.staples())
                .singleElement()
                .satisfies(salt ->
                        assertThat(salt.grams().orElseThrow().doubleValue()).isEqualTo(2.5));
    }

    private static Dish keeps(String... ingredients) {
        return dishes.propose(new TypedDish("A try", "4", "", List.of(ingredients), List.of(), "", ""))
                .dish();
    }

    @Test
    void a_step_says_how_a_food_is_cooked() {
        Dish dish = dishes.propose(new TypedDish(
                        "A roast try",
                        "4",
                        "dinner",
                        List.of("800 g chicken breast", "1 kg potatoes, boiled", "20 g olive oil"),
                        List.of("Roast the chicken in the oil at 400 F for 25 minutes.", "Boil the potatoes."),
                        "2",
                        "no"))
                .dish();
        Map<String, String> cooked = new LinkedHashMap<>();
        dish.parts()
                .forEach(part -> part.mix()
                        .forEach(i ->
                                i.cooked().ifPresent(y -> cooked.put(i.food().id(), y.method()))));
        assertThat(cooked).containsEntry("chicken_breast", "roasted").containsEntry("potato", "boiled");
        assertThat(dish.steps().get(0).way().celsius()).hasValue(204);
        assertThat(dish.fridgeDays()).isEqualTo(2);
    }

    /** Random batches of the catalogue's own foods, with a seed. */
    @Test
    void every_batch_makes_a_dish_that_holds_it() {
        List<Food> foods = List.copyOf(kitchen.foods().values());
        for (int seed = 0; seed < Integer.getInteger("batchwright.seeds", 12); seed++) {
            var random = new Random(seed);
            int containers = 1 + random.nextInt(12);
            Map<Food, Integer> typed = new LinkedHashMap<>();
            for (int n = 2 + random.nextInt(10); n > 0; n--) {
                typed.put(foods.get(random.nextInt(foods.size())), containers * (10 + random.nextInt(140)));
            }
            List<String> lines = new ArrayList<>();
            typed.forEach((food, grams) -> lines.add(grams + " g " + food.id()));
            typed.keySet().removeIf(food -> !(dishes.line("1 g " + food.id()) instanceof BatchLine.Mixed));
            if (typed.isEmpty()) {
                continue;
            }
            ProposedDish proposed =
                    dishes.propose(new TypedDish("A try", "" + containers, "", lines, List.of(), "", ""));

            Map<Food, Double> holds = new LinkedHashMap<>();
            proposed.dish()
                    .parts()
                    .forEach(part -> part.mix()
                            .forEach((Ingredient i) ->
                                    holds.merge(i.food(), i.amount().doubleValue() * containers, Double::sum)));
            assertThat(holds.keySet()).as("seed " + seed).isEqualTo(typed.keySet());
            typed.forEach(
                    (food, grams) -> assertThat(holds.get(food)).isCloseTo(grams, within(0.05 * containers + 0.001)));
            assertThat(proposed.doubts()).noneMatch(doubt -> doubt.contains("no step takes in hand"));
        }
    }
}
