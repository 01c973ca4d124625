package batchwright.report;

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
        assertThat(new Page().line("a\u001b[2Jb\u0007").toString()).isEqualTo("a?[2Jb?\n");
    }
}
