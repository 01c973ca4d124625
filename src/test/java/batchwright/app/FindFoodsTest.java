package batchwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.KitchenReader;
import batchwright.files.disk.StarterFiles;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.OtherNames;
import batchwright.reference.Sr28;
import batchwright.reference.Sr28Food;
import batchwright.reference.find.FoundFoods;
import batchwright.text.Words;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which foods the starter catalogue and USDA SR28 give for what a cook types. */
class FindFoodsTest {
    private static final Sr28 TABLE = Sr28.load();
    private static final Kitchen KITCHEN = KitchenReader.readFoods(new StarterFiles(), LocalDate.of(2026, 11, 25))
            .value()
            .orElseThrow();

    private final FindFoods find = new FindFoods(KITCHEN);

    /** One slip from fillet, red wine and soba; but millet and wing are words of SR28. */
    @ParameterizedTest
    @ValueSource(strings = {"millet", "wings", "wing"})
    void a_word_that_is_there_in_one_table_is_not_bent_to_another_in_the_other(String word) {
        FoundFoods found = found(word);

        assertThat(found.yours()).isEmpty();
        assertThat(found.reference())
                .isNotEmpty()
                .allSatisfy(
                        food -> assertThat(food.words()).anyMatch(w -> w.startsWith("millet") || w.startsWith("wing")));
    }

    @Test
    void a_slip_is_overlooked_where_neither_table_has_the_word() {
        assertThat(found("brocoli").yours()).extracting(Food::id).startsWith("broccoli");
        assertThat(found("brocoli").reference()).isNotEmpty();
        assertThat(found("qwertz").isEmpty()).isTrue();
        assertThat(found(" ,").isEmpty()).isTrue();
    }

    @ParameterizedTest(name = "{0}: {1} before {2}")
    @CsvSource({
        "rice, white_rice, rice_noodles",
        "butter, butter, peanut_butter",
        "butter, unsalted_butter, peanut_butter",
        "butter, peanut_butter, buttermilk",
        "meat, bacon, baked_beans",
        "egg, egg_boiled, egg_noodles",
        "tomato, tomato, tomato_paste",
        "milk, whole_milk, milk_powder",
        "beef ground, ground_beef_93, beef_broth"
    })
    void what_a_food_is_comes_before_what_it_only_holds(String words, String first, String later) {
        List<String> ids = find.matching(List.of(words)).stream().map(Food::id).toList();

        assertThat(ids).contains(first).doesNotHaveDuplicates();
        assertThat(ids.contains(later) && ids.indexOf(later) < ids.indexOf(first))
                .isFalse();
    }

    /** Common knowledge of kitchens. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "aubergine, eggplant",
        "Aubergines, eggplant",
        "courgettes, zucchini",
        "minced beef, ground_beef_93",
        "beef mince, ground_beef_93",
        "lean mince pork, lean_ground_pork",
        "porridge, oatmeal_cooked",
        "porridge oats, rolled_oats",
        "sultanas, raisins",
        "cornflour, cornstarch",
        "prawns, shrimp",
        "passata, tomato_puree",
        "tinned tomatoes, canned_tomatoes",
        "spring onions, scallion",
        "soya sauce, soy_sauce",
        "natural yoghurt, whole_yogurt",
        "wholemeal flour, whole_wheat_flour"
    })
    void british_words_find_the_food(String words, String id) {
        assertThat(found(words).yours()).extracting(Food::id).contains(id);
    }

    @ParameterizedTest
    @CsvSource({"rocket, 'Arugula, raw'", "swede, 'Rutabagas, raw'", "coriander, 'Coriander (cilantro) leaves, raw'"})
    void british_words_find_the_food_of_sr28(String word, String description) {
        assertThat(found(word).reference())
                .extracting(Sr28Food::description)
                .element(0)
                .isEqualTo(description);
    }

    /** A line of the table that finds no food would be of no use. */
    @Test
    void every_line_of_the_other_names_finds_something() {
        assertThat(OtherNames.all()).hasSizeGreaterThan(50).allSatisfy((other, ours) -> {
            assertThat(ours)
                    .allSatisfy(words -> assertThat(found(words).isEmpty())
                            .as(other + ": " + words)
                            .isFalse());
            assertThat(OtherNames.replacedIn(Words.of(other))).as(other).isNotEmpty();
        });
    }

    /** Words that begin otherwise, or are far away, are no help: brains for prawns, dark for quark. */
    @ParameterizedTest
    @CsvSource({"aubergenes, aubergine", "chikcpaes, chickpea", "courgetes, courgette", "zzzz, ''"})
    void nearest_words(String typed, String near) {
        assertThat(find.nearestWords(TABLE, List.of(typed)).stream().findFirst().orElse(""))
                .isEqualTo(near);
    }

    @Test
    void any_of_the_words_for_comparing() {
        assertThat(find.matching(List.of("lentils", "rice"))).isEmpty();
        assertThat(find.matchingAny(List.of("lentils", "rice")))
                .extracting(Food::id)
                .contains("lentils", "red_lentils", "white_rice")
                .doesNotContain("pasta");
    }

    private FoundFoods found(String words) {
        return find.found(TABLE, List.of(words));
    }
}
