package batchwright.report.print;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AsciiTest {
    @ParameterizedTest
    @CsvSource({
        "crème brûlée, creme brulee",
        "1 <= 2 # |, 1 <= 2 # |",
        "שלום x, ???? x",
        "a\uD83C\uDF72b, a?b",
        "\u202Ea\u2068b\u2069, ab",
        "74 °C, 74 ?C"
    })
    void what_is_no_ascii_loses_its_accent_or_becomes_a_question_mark(String text, String shown) {
        assertThat(Ascii.of(text)).isEqualTo(shown);
    }
}
