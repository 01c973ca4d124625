package batchwright.food;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasureNameTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "cup, cups",
        "cup of penne, cups of penne",
        "small pot, small pots",
        "small box, small boxes",
        "bunch, bunches",
        "half, halves",
        "slice, slices",
        "clove, cloves",
        "tbsp, tbsp",
        "medium, medium",
        "extra large, extra large"
    })
    void plurals(String one, String many) {
        assertThat(MeasureName.plural(one)).isEqualTo(many);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"0.5, cup", "1, cup", "1.25, cups", "2, cups"})
    void more_than_one_is_a_plural(BigDecimal count, String name) {
        assertThat(MeasureName.of(count, "cup")).isEqualTo(name);
    }
}
