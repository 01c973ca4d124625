package batchwright.reference;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.text.Words;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a cook types, and what has to be found. The numbers are those of the source. */
class Sr28SearchTest {
    private static final Sr28 TABLE = Sr28.load();

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
        assertThat(find(words)).extracting(Sr28Food::ndb).contains(ndb);
        assertThat(find(words).subList(0, Math.min(most, find(words).size())))
                .extracting(Sr28Food::ndb)
                .contains(ndb);
    }

    @ParameterizedTest
    @CsvSource({"chicken breast raw", "black beans canned sodium", "rice white short raw", "peppr swet red raw"})
    void the_order_of_the_words_does_not_matter(String words) {
        List<String> first = Words.of(words);
        var again = new ArrayList<>(first);
        List<Sr28Food> found = search(first);

        assertThat(found).isNotEmpty();
        for (int turn = 0; turn < first.size(); turn++) {
            Collections.rotate(again, 1);
            assertThat(search(again)).hasToString(found.toString());
            Collections.swap(again, 0, 1);
            assertThat(search(again)).hasToString(found.toString());
        }
    }

    @Test
    void every_word_must_fit() {
        assertThat(find("lentils qwertz")).isEmpty();
        assertThat(find("oats")).allSatisfy(food -> assertThat(food.words()).containsAnyOf("oat", "oats", "oatmeal"));
        assertThat(search(List.of())).isEmpty();
    }

    /** A word that is there is not bent to another one: rice is not looked for in ice cream. */
    @Test
    void a_slip_is_overlooked_only_where_nothing_else_fits() {
        assertThat(find("rice"))
                .isNotEmpty()
                .noneMatch(food -> food.words().stream().noneMatch(w -> w.startsWith("rice")));
        assertThat(find("brocoli")).hasToString(find("broccoli").toString());
        // each word is known, but no food has both
        assertThat(find("bean backed")).extracting(Sr28Food::description).anyMatch(d -> d.contains("baked"));
    }

    @Test
    void whole_words_come_before_beginnings() {
        List<Boolean> whole = find("egg").stream()
                .map(food -> food.words().contains("egg") || food.words().contains("eggs"))
                .toList();

        assertThat(whole).contains(true, false);
        assertThat(whole.lastIndexOf(true)).isLessThan(whole.indexOf(false));
    }

    @Test
    void every_food_is_found_by_its_own_words() {
        List<Sr28Food> all = TABLE.foods();
        for (int i = 0; i < all.size(); i += 97) {
            Sr28Food food = all.get(i);
            assertThat(search(food.words())).extracting(Sr28Food::ndb).contains(food.ndb());
        }
    }

    private static List<Sr28Food> find(String words) {
        return search(Words.of(words));
    }

    private static List<Sr28Food> search(List<String> words) {
        var search = new Sr28Search(TABLE);
        List<Sr28Food> found = search.exactly(List.of(words));
        return found.isEmpty() ? search.nearly(words) : found;
    }
}
