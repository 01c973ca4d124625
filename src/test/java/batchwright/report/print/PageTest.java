package batchwright.report.print;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PageTest {
    @Test
    void wraps_between_words_and_indents() {
        String page = new Page().item("word ".repeat(20)).toString();

        assertThat(page.lines()).allMatch(line -> line.length() <= 80).hasSize(2);
        assertThat(page).startsWith("  - word word").contains("\n    word");
    }

    @Test
    void never_two_empty_lines_nor_one_at_the_start() {
        assertThat(new Page().gap().line("a").gap().gap().line("b").toString()).isEqualTo("a\n\nb\n");
    }

    /** A name in a file could hold the codes that move a terminal's cursor. */
    @Test
    void what_a_terminal_would_obey_is_not_printed() {
        assertThat(new Page().line("a\u001b[2Jb\u0007").toString()).isEqualTo("a\\u001B[2Jb\\u0007\n");
    }

    /** C1 codes too: some terminals take 0x9B for the start of a command. */
    @Test
    void nor_what_only_some_terminals_obey() {
        assertThat(new Page().line("a\u009b2Jb\u0085").toString()).isEqualTo("a\\u009B2Jb\\u0085\n");
    }

    @Test
    void blocks_stand_beside_each_other() {
        Page left = new Page(20).line("a").line("bb");
        Page right = new Page(20).line("1").line("2").line("3");

        assertThat(new Page().beside(left, 5, right).toString()).isEqualTo("a    1\nbb   2\n     3\n");
    }

    /** However wide the page is. */
    @Test
    void running_text_is_at_most_100_columns_wide() {
        assertThat(new Page(140).paragraph("word ".repeat(60)).toString().lines())
                .allMatch(line -> line.length() <= 100)
                .anyMatch(line -> line.length() > 90);
    }
}
