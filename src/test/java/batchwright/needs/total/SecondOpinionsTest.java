package batchwright.needs.total;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.needs.TestEater;
import batchwright.needs.evidence.Estimate;
import batchwright.person.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SecondOpinionsTest {
    /** At 200 cm, BMI 25 is 100 kg. */
    @ParameterizedTest
    @CsvSource({"99.9, 'IOM 2005 EER, low active'", "100, 'IOM 2005 TEE from BMI 25, low active'"})
    void nasem_first_then_iom_for_this_bmi(double kg, String iom) {
        assertThat(SecondOpinions.of(TestEater.body(Sex.MALE, kg, 200, 30), 1.55))
                .extracting(Estimate::equation)
                .containsExactly("NASEM 2023 EER, low active", iom);
    }

    @Test
    void none_outside_their_categories() {
        assertThat(SecondOpinions.of(TestEater.body(Sex.MALE, 80, 180, 30), 2.5))
                .isEmpty();
    }
}
