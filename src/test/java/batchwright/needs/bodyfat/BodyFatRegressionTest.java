package batchwright.needs.bodyfat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.TestEater;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.person.Tape;
import batchwright.quantity.Length;
import batchwright.quantity.Mass;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Arithmetic on the printed formulas, done apart from this program: catches slips in the code, not a coefficient noted wrongly. */
class BodyFatRegressionTest {
    /** In inches: height, neck, waist, hips; to 0.001 points. */
    @ParameterizedTest
    @CsvSource({"MALE, 70, 15, 34, , 17.513", "MALE, 71, 16, 38, , 22.558", "FEMALE, 65, 13, 29, 38, 27.256"})
    void tape(Sex sex, double height, double neck, double waist, Double hips, double percent) {
        var tape = new Tape(
                Length.ofInches(neck),
                Length.ofInches(waist),
                Optional.ofNullable(hips).map(Length::ofInches));
        Body body = new Body(sex, 30, new Mass(80), Length.ofInches(height), Optional.empty(), Optional.of(tape));
        assertThat(HodgdonFriedl1999.of(body).orElseThrow().fat().percent()).isCloseTo(percent, within(0.0006));
    }

    /**
     * BMI is weight at a height of 1 m x 100 cm. The last line is a web page's example, which prints 24.37: 1.20 x 19.5 + 0.23 x 29 -
     * 5.4 is 24.67, so the page is wrong by 0.3.
     */
    @ParameterizedTest
    @CsvSource({"MALE, 25, 30, 20.7", "FEMALE, 22, 25, 26.75", "FEMALE, 19.5, 29, 24.67"})
    void deurenberg(Sex sex, double bmi, double years, double percent) {
        Body body = TestEater.body(sex, bmi * 2.89, 170, years);
        assertThat(Deurenberg1991.of(body).fat().percent()).isCloseTo(percent, within(1e-9));
    }

    /**
     * Another published formula from BMI: Gomez-Ambrosi J et al. Diabetes Care 2012;35:383-388 (coefficients checked in one
     * transcription). For adults of 20-70 years and BMI 19-30 the two are up to 5.1 points apart, little more than the error of either.
     */
    @Test
    void two_published_formulas_from_bmi_are_not_far_apart() {
        for (int bmi = 19; bmi <= 30; bmi++) {
            for (int years = 20; years <= 70; years += 5) {
                for (Sex sex : Sex.values()) {
                    Body body = TestEater.body(sex, bmi * 2.89, 170, years);
                    assertThat(Deurenberg1991.of(body).fat().percent())
                            .as("%s, BMI %s, %s years", sex, bmi, years)
                            .isCloseTo(gomezAmbrosi(sex == Sex.FEMALE ? 1 : 0, bmi, years), within(5.1));
                }
            }
        }
    }

    private static double gomezAmbrosi(int female, double bmi, double years) {
        return -44.988
                + 0.503 * years
                + 10.689 * female
                + 3.172 * bmi
                - 0.026 * bmi * bmi
                + 0.181 * bmi * female
                - 0.02 * bmi * years
                - 0.005 * bmi * bmi * female
                + 0.00021 * bmi * bmi * years;
    }
}
