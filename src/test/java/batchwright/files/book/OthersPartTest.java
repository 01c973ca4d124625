package batchwright.files.book;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stays when anna goes. */
class OthersPartTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2026-11-29 ate ben 2 ragu, 1280 kcal                          | 2026-11-29 ate ben 2 ragu, 1280 kcal
            2026-11-29 ate ben 2 ragu of anna, 1280 kcal                  | 2026-11-29 ate ben out 1280 kcal
            2026-11-29 ate ben ragu of anna  # hungry                     | 2026-11-29 ate ben not logged
            2026-11-30 undo 2026-11-29 ate ben 2 ragu of anna, 1280 kcal  | 2026-11-30 undo 2026-11-29 ate ben out 1280 kcal
            2026-11-29 ate anna 2 ragu of ben, 1280 kcal                  | 2026-11-29 gave away 2 ragu of ben
            2026-11-29 ate ben out 900 kcal # with anna                   | 2026-11-29 ate ben out 900 kcal
            2026-11-29 bought 500 g rice                                  | 2026-11-29 bought 500 g rice
            """)
    void others_keep_what_is_theirs(String line, String left) {
        assertThat(new OthersPart("anna").of(line)).contains(left);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2026-11-29 ate anna 2 ragu, 1280 kcal
            2026-11-29 weighed anna 70 kg
            2026-11-29 filled 3 ragu for anna in fridge until 2026-12-02
            2026-11-29 gave away 1 ragu of anna
            2026-11-29 thawed 1 ragu of anna
            # anna moves out
            2026-11-29 undo 2026-11-28 ill anna
            """)
    void nothing_of_hers_stays(String line) {
        assertThat(new OthersPart("anna").of(line)).isEmpty();
    }

    /** The undoing and the undone line change alike, so that they still fit. */
    @Test
    void what_was_undone_stays_undone() {
        var part = new OthersPart("anna");
        String line = "2026-11-29 ate ben 2 ragu of anna, 1280 kcal";

        assertThat(part.of("2026-11-30 undo " + line).orElseThrow())
                .isEqualTo("2026-11-30 undo " + part.of(line).orElseThrow());
    }
}
