package batchwright.needs.caution;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.limit.DayTarget;
import batchwright.limit.TestTarget;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Above 50 to 60 g wind and cramps are common (common practice); no upper level is published. */
class FibreCautionTest {
    private static DayTarget floor(int fibre) {
        return TestTarget.energy(2000, 1900, 2100)
                .protein(80)
                .fat(40, 80)
                .fibre(fibre)
                .fruitVeg(400)
                .container(300, 900)
                .containerProtein(20)
                .target();
    }

    @ParameterizedTest
    @CsvSource({
        "38, 50.0, false",
        "38, 50.1, true",
        "38, 74, true",
        "25, 50.0, false",
        "25, 50.1, true",
        "0, 50.1, true",
        "75, 93, false",
        "75, 94, true"
    })
    void very_much_fibre_is_pointed_out(int floor, BigDecimal average, boolean said) {
        assertThat(FibreCaution.of(floor(floor), average).isPresent()).isEqualTo(said);
    }

    @Test
    void it_is_gentle_and_sends_to_a_doctor_where_one_should_decide() {
        Caution caution = FibreCaution.of(floor(46), new BigDecimal("111.4")).orElseThrow();

        assertThat(caution.stopsPlanning()).isFalse();
        assertThat(caution.code()).isEqualTo("fibre_high");
        assertThat(caution.text()).contains("111 g of fibre; 46 g are asked for", "drink enough", "a doctor");
        assertThat(caution.source().text()).contains("common practice");
    }
}
