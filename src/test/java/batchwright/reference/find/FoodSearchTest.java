package batchwright.reference.find;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.reference.Sr28;
import batchwright.reference.Sr28Food;
import batchwright.reference.find.FoundFoods.Match;
import batchwright.text.Words;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a cook types, and what has to be found in USDA SR28. The numbers are those of the source. */
class FoodSearchTest {
    private static final List<Sr28Food> TABLE = Sr28.load().foods();
    private static final FoodSearch SEARCH = new FoodSearch(List.of(), TABLE);

    /** The food that is meant is among the first so many. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
        millet,                 20031, 1
        raw millet,             20031, 1
        cheddar cheese,         01009, 1
        olive oil,              04053, 1
        almonds,                12061, 2
        banana,                 09040, 1
        bananas,                09040, 1
        lentils,                16069, 2
        lentil raw,             16069, 2
        black bean,             16014, 2
        beans black,            16014, 2
        broccoli,               11090, 1
        brocoli,                11090, 1
        chiken breast raw,      05062, 3
        salmon atlantic raw,    15236, 3
        raw farmed salmon,      15236, 2
        peanut butter smooth,   16098, 5
        whole wheat flour,      20080, 3
        greek yogurt,           01256, 3
        yogurt greek plain,     01256, 3
        sweet potato raw,       11507, 1
        tomatos raw,            11529, 9
        strawberry,             09316, 1
        Strawberrys,            09316, 1
        potatoe raw,            11352, 9
        spinach leaves frozen,  11463, 2
        93% beef raw,           23472, 3
        """)
    void what_is_meant_comes_first(String words, String ndb, int most) {
        assertThat(find(words).stream().limit(most)).extracting(Sr28Food::ndb).contains(ndb);
    }

    @ParameterizedTest
    @ValueSource(strings = {"chicken breast raw", "black beans canned sodium", "rice white short raw"})
    void the_order_of_the_words_changes_no_food(String typed) {
        var words = new ArrayList<>(Words.of(typed));
        var found = new HashSet<>(find(typed));

        assertThat(found).isNotEmpty();
        for (int turn = 0; turn < words.size(); turn++) {
            Collections.rotate(words, 1);
            assertThat(new HashSet<>(find(String.join(" ", words)))).isEqualTo(found);
        }
    }

    @Test
    void foods_with_all_words_then_those_with_most_of_them() {
        assertThat(SEARCH.find("red lentils").match()).isEqualTo(Match.ALL);
        assertThat(SEARCH.find("lentils qwertz").match()).isEqualTo(Match.SOME);
        assertThat(find("lentils qwertz")).extracting(Sr28Food::ndb).contains("16069");
        assertThat(SEARCH.find("qwertz").isEmpty()).isTrue();
        assertThat(SEARCH.find(" ,").isEmpty()).isTrue();
    }

    /** A word that is there is not bent to another one: rice is not looked for in ice cream. */
    @Test
    void a_slip_is_overlooked_only_where_nothing_else_fits() {
        assertThat(find("rice"))
                .isNotEmpty()
                .noneMatch(food -> food.words().stream().noneMatch(w -> w.startsWith("rice")));
        assertThat(find("brocoli")).isEqualTo(find("broccoli"));
        assertThat(SEARCH.find("cinammon").readAs()).isEqualTo("cinnamon");
        assertThat(SEARCH.find("cous cous").readAs()).isEqualTo("couscous");
        assertThat(SEARCH.find("chickenbreast").readAs()).isEqualTo("chicken breast");
    }

    @ParameterizedTest
    @CsvSource({"crème fraîche, creme fraiche", "Jalapeño, jalapeno", "Crêpes, crepes"})
    void accents_do_not_matter(String accented, String plain) {
        assertThat(find(accented)).isNotEmpty().isEqualTo(find(plain));
    }

    @ParameterizedTest
    @CsvSource({"tin of chickpeas, canned", "chickpeas tin, canned", "can of tuna, canned"})
    void a_tin_is_canned(String typed, String word) {
        assertThat(find(typed).get(0).words()).contains(word);
    }

    /** What a food is without, it is not found by: lemons, without peel. */
    @Test
    void every_food_is_found_by_its_own_words() {
        List<Sr28Food> said =
                TABLE.stream().filter(food -> !food.words().contains("without")).toList();
        for (int i = 0; i < said.size(); i += 97) {
            assertThat(find(said.get(i).description())).contains(said.get(i));
        }
        assertThat(find("lemon peel").get(0).description()).isEqualTo("Lemon peel, raw");
    }

    private static List<Sr28Food> find(String words) {
        return SEARCH.find(words).reference();
    }
}
