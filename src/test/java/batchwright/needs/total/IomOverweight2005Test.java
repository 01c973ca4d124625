package batchwright.needs.total;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.TestEater;
import batchwright.person.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IomOverweight2005Test {
    /** Arithmetic on the equations as printed, worked out apart from this program: guards the code, proves nothing about them. */
    @ParameterizedTest
    @CsvSource({
        "MALE, 100, 180, 1.2, 2801.20", "MALE, 100, 180, 1.5, 3055.46",
        "MALE, 100, 180, 1.7, 3415.65", "MALE, 100, 180, 2.2, 4051.29",
        "FEMALE, 85, 165, 1.2, 2119.95", "FEMALE, 85, 165, 1.5, 2438.41",
        "FEMALE, 85, 165, 1.7, 2657.34", "FEMALE, 85, 165, 2.2, 2995.70"
    })
    void matches_the_arithmetic(Sex sex, double kg, double cm, double pal, double kcal) {
        assertThat(kcal(sex, kg, cm, 40, pal)).isCloseTo(kcal, within(0.006));
    }

    /**
     * Where they meet, at BMI 25, this equation and the one for normal weight come from overlapping data and have to be near each
     * other. Measured on 19-80 years and 150-200 cm: ratios of 0.959 to 1.054.
     */
    @Test
    void meets_the_equation_for_normal_weight_at_bmi_25() {
        for (Sex sex : Sex.values()) {
            for (double pal : new double[] {1.2, 1.5, 1.7, 2.2}) {
                for (double cm = 150; cm <= 200; cm += 5) {
                    for (double years = 19; years <= 80; years += 1) {
                        double kg = 25 * cm * cm / 10_000;
                        double normal = IomEer2005.total(TestEater.body(sex, kg, cm, years), pal)
                                .orElseThrow()
                                .perDay()
                                .kcal();
                        assertThat(kcal(sex, kg, cm, years, pal) / normal).isBetween(0.95, 1.06);
                    }
                }
            }
        }
    }

    @Test
    void says_whom_it_was_made_for() {
        assertThat(IomOverweight2005.total(TestEater.body(Sex.MALE, 81, 180, 30), 1.5)
                        .orElseThrow()
                        .caveats())
                .isEmpty();
        assertThat(IomOverweight2005.total(TestEater.body(Sex.MALE, 70, 180, 18), 1.5)
                        .orElseThrow()
                        .caveats())
                .containsExactly("made for ages from 19 years, not 18.0", "made for a BMI from 25, not 21.6");
    }

    @Test
    void says_that_the_factors_of_women_are_from_memory() {
        assertThat(source(Sex.FEMALE)).contains("from memory");
        assertThat(source(Sex.MALE)).doesNotContain("memory");
    }

    private static String source(Sex sex) {
        return IomOverweight2005.total(TestEater.body(sex, 90, 170, 30), 1.5)
                .orElseThrow()
                .source()
                .text();
    }

    private static double kcal(Sex sex, double kg, double cm, double years, double pal) {
        return IomOverweight2005.total(TestEater.body(sex, kg, cm, years), pal)
                .orElseThrow()
                .perDay()
                .kcal();
    }
}
