package batchwright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class ProblemTest {
    @Test
    void carets_stand_below_the_words_they_mark() {
        var file = SourceFile.of("pantry.csv", "food,grams\notas,800\n");
        var problem = Problem.error(file.span(2, 1, 4), "there is no food called \"otas\"", "expected a food")
                .near(Optional.of("oats"));
        assertThat(problem.render()).isEqualTo("""
                        pantry.csv:2:1: error: there is no food called "otas"
                        2 | otas,800
                          | ^^^^
                        expected a food; nearest: "oats"
                        """);
    }

    @Test
    void a_tab_is_shown_as_one_blank() {
        var file = SourceFile.of("a.yaml", "a:\tb");
        assertThat(Problem.warning(file.span(1, 4, 1), "wrong", "").render())
                .isEqualTo("a.yaml:1:4: warning: wrong\n1 | a: b\n  |    ^\n");
    }

    @Test
    void a_long_line_is_cut_around_the_mark() {
        var file = SourceFile.of("a.csv", "x".repeat(500) + "WRONG" + "y".repeat(500));
        String[] lines =
                Problem.error(file.span(1, 501, 5), "wrong", "").render().split("\n", -1);
        assertThat(lines[1]).hasSizeLessThan(90).contains("...xx", "xxWRONGyy", "yy...");
        assertThat(lines[2].indexOf('^')).isEqualTo(lines[1].indexOf("WRONG"));
        assertThat(lines[2]).endsWith("^^^^^").doesNotEndWith("^^^^^^");
    }

    @Test
    void a_mark_longer_than_the_shown_line_ends_with_it() {
        var file = SourceFile.of("a.csv", "x".repeat(1000));
        String[] lines =
                Problem.error(file.span(1, 1, 1000), "wrong", "").render().split("\n", -1);
        assertThat(lines[2]).hasSizeLessThan(90);
    }

    @Test
    void what_a_terminal_would_obey_is_an_escape_and_carets_still_stand_below_their_words() {
        var file = SourceFile.of("a\u001b.csv", "a\u001b[31mb\u202ec WRONG \ud83c\udf72d");
        String[] lines = Problem.error(file.span(1, 11, 5), "wr\nong", "ex\u2028pected")
                .near(Optional.of("\u200b"))
                .render()
                .split("\n", -1);

        assertThat(lines)
                .containsExactly(
                        "a\\u001B.csv:1:11: error: wr\\u000Aong",
                        "1 | a\\u001B[31mb\\u202Ec WRONG \ud83c\udf72d",
                        "  |                     ^^^^^",
                        "ex\\u2028pected; nearest: \"\\u200B\"",
                        "");
        assertThat(lines[2].indexOf('^')).isEqualTo(lines[1].indexOf("WRONG"));
        String[] hidden =
                Problem.error(file.span(1, 8, 1), "wrong", "").render().split("\n", -1);
        assertThat(hidden[2].indexOf('^')).isEqualTo(hidden[1].indexOf("\\u202E"));
        assertThat(hidden[2]).endsWith("^^^^^^").doesNotEndWith("^^^^^^^");
    }

    /** A name of many letters, or a list, does not fill the screen; no emoji is cut in two. */
    @Test
    void long_sentences_and_lines_are_cut() {
        var file = SourceFile.of("a.csv", "\ud83c\udf72".repeat(300));
        String text =
                Problem.error(file.span(1, 101, 2), "w".repeat(70_000), "").render();

        assertThat(text).hasSizeLessThan(1500).contains("www ... www");
        assertThat(text.replace("\ud83c\udf72", "")).doesNotContain("\ud83c", "\udf72", "\\u");
    }

    @Test
    void a_place_beyond_the_line_is_moved_to_its_end() {
        var file = SourceFile.of("a.csv", "ab");
        assertThat(file.span(1, 99, 5).column()).isEqualTo(3);
        assertThat(Problem.error(file.span(7, 3, 1), "wrong", "").render()).startsWith("a.csv:7:1: error: wrong");
    }

    @Test
    void a_problem_of_the_whole_file_has_no_line() {
        assertThat(Problem.error(Span.whole(SourceFile.of("a.csv", "x")), "wrong", "expected right")
                        .render())
                .isEqualTo("a.csv: error: wrong\nexpected right\n");
    }
}
