package batchwright.report.print;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TextTableTest {
    @Test
    void text_stands_left_and_numbers_right_under_their_heads() {
        var table = new TextTable("  ").left("food").right("protein\ng").right("kcal");
        table.row("oats", "13.2", "379").row("butter, salted", "0.9", "717");

        assertThat(table.lines(Page.WIDTH))
                .containsExactly(
                        "                  protein",
                        "  food                  g  kcal",
                        "  oats               13.2   379",
                        "  butter, salted      0.9   717");
    }

    @Test
    void the_widest_text_is_wrapped_to_80_columns_between_words() {
        var table = new TextTable("").left("a").left("b").right("n");
        table.row("short", "word ".repeat(40).strip(), "1");

        assertThat(table.lines(Page.WIDTH)).hasSize(4).allMatch(line -> line.length() <= 80);
        assertThat(String.join(" ", table.lines(Page.WIDTH)).split("word", -1)).hasSize(41);
    }

    @Test
    void no_word_is_broken_even_when_the_table_gets_too_wide() {
        var table = new TextTable("").left("a").left("b");
        table.row("x".repeat(60), "y".repeat(60));

        assertThat(table.lines(Page.WIDTH).get(1)).isEqualTo("x".repeat(60) + "  " + "y".repeat(60));
    }
}
