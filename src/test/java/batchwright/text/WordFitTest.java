package batchwright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What fits a typed word. */
class WordFitTest {
    @ParameterizedTest
    @CsvSource({
        "berry, berries",
        "tomato, tomatoes",
        "potato, potatoes",
        "peach, peaches",
        "radish, radishes",
        "leaf, leaves",
        "loaf, loaves",
        "half, halves",
        "cookie, cookies",
        "egg, eggs",
        "bean, beans",
        "olive, olives",
        "pie, pies",
        "pea, peas"
    })
    void one_and_many_fit_each_other_as_well_as_the_word_itself(String one, String many) {
        assertThat(new WordFit(one).points(many)).isEqualTo(new WordFit(one).points(one));
        assertThat(new WordFit(many).points(one)).isEqualTo(new WordFit(one).points(one));
        assertThat(one).startsWith(new WordFit(one).stem());
        assertThat(many).startsWith(new WordFit(one).stem());
        assertThat(one).startsWith(new WordFit(many).stem());
    }

    @ParameterizedTest
    @CsvSource({"asparagus, asparagu", "swiss, swis", "couscous, couscou", "egg, eggplant"})
    void an_s_that_is_no_plural_stays(String word, String other) {
        assertThat(new WordFit(word).points(other)).isGreaterThan(new WordFit(word).points(word));
    }

    /** Left out, put in, mistaken, swapped; in the singular too. */
    @ParameterizedTest
    @CsvSource({
        "brocoli, broccoli",
        "chickken, chicken",
        "yogart, yogurt",
        "almnods, almonds",
        "strawbery, strawberries",
        "bref, beef"
    })
    void one_slip_is_overlooked_only_when_asked(String typed, String word) {
        var fit = new WordFit(typed);

        assertThat(fit.points(word)).isEqualTo(WordFit.NONE);
        assertThat(fit.pointsWithSlip(word)).isLessThan(WordFit.NONE);
    }

    @ParameterizedTest
    @CsvSource({"egz, egg", "brocli, broccoli", "rcie, ride"})
    void short_words_and_two_slips_are_not_overlooked(String typed, String word) {
        assertThat(new WordFit(typed).pointsWithSlip(word)).isEqualTo(WordFit.NONE);
    }

    @Test
    void a_whole_word_is_better_than_a_beginning_and_that_than_a_slip() {
        int whole = new WordFit("rice").points("rice");
        int beginning = new WordFit("rice").points("riced");
        int slip = new WordFit("rice").pointsWithSlip("price");

        assertThat(List.of(whole, beginning, slip)).isSorted().doesNotHaveDuplicates();
        assertThat(new WordFit("rice").best(List.of("riced", "rice"), true)).isEqualTo(whole);
    }

    @Test
    void words_are_letters_digits_and_per_cent() {
        assertThat(Words.of("Milk, reduced fat (2% milkfat), NOT \"Bob's\""))
                .containsExactly("milk", "reduced", "fat", "2%", "milkfat", "not", "bob", "s");
        assertThat(Words.of(" ,; ")).isEmpty();
    }
}
