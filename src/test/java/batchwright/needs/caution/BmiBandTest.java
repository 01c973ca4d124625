package batchwright.needs.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bands of the World Health Organization, and its action points for Asian adults of 2004; both from memory, not seen. */
class BmiBandTest {
    @ParameterizedTest
    @CsvSource({
        "15.99, SEVERE_THINNESS",
        "16, MODERATE_THINNESS",
        "16.99, MODERATE_THINNESS",
        "17, MILD_THINNESS",
        "18.49, MILD_THINNESS",
        "18.5, NORMAL",
        "24.99, NORMAL",
        "25, OVERWEIGHT",
        "29.99, OVERWEIGHT",
        "30, OBESITY_1",
        "34.99, OBESITY_1",
        "35, OBESITY_2",
        "39.99, OBESITY_2",
        "40, OBESITY_3"
    })
    void bands_begin_where_published(double bmi, BmiBand band) {
        assertThat(BmiBand.of(bmi)).isEqualTo(band);
    }

    @ParameterizedTest
    @CsvSource({"22.99,", "23, 23", "27.49, 23", "27.5, 27.5", "40, 27.5"})
    void action_points_for_asian_adults_are_23_and_27_5(double bmi, Double point) {
        assertThat(BmiBand.asianActionPoint(bmi))
                .isEqualTo(point == null ? OptionalDouble.empty() : OptionalDouble.of(point));
    }
}
