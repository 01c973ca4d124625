package batchwright.report.html.chart;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Broken by hand. */
class FirstWordsTest {
    @Test
    void what_fits_stays_whole() {
        assertThat(FirstWords.of("Boil the peas.", 14)).isEqualTo("Boil the peas.");
        assertThat(FirstWords.of("Boil the peas.", 8, 3)).containsExactly("Boil the", "peas.");
    }

    @Test
    void an_ellipsis_tells_that_there_are_more() {
        assertThat(FirstWords.of("Boil the peas, then drain.", 16)).isEqualTo("Boil the peas …");
        assertThat(FirstWords.of("Boil the green peas and drain.", 10, 2)).containsExactly("Boil the", "green …");
    }

    @Test
    void no_line_is_wider_than_there_is_room() {
        assertThat(FirstWords.of("Antidisestablishmentarianism", 10, 2)).containsExactly("Antidises…");
        assertThat(FirstWords.of("Antidisestablishmentarianism is long", 10))
                .isEqualTo("Antidis… …")
                .hasSize(10);
    }
}
