package batchwright.needs.resting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.TestEater;
import batchwright.person.Body;
import batchwright.person.Sex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class RestingEnergyPublishedTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/published/resting_energy.csv", useHeadersInDisplayName = true)
    void matches_the_worked_examples(
            String where,
            String equation,
            Sex sex,
            double kg,
            double cm,
            double years,
            Double fatPercent,
            double kcal,
            double tolerance) {
        Body body = TestEater.body(sex, kg, cm, years, fatPercent);
        assertThat(Equations.kcal(equation, body)).as(where).isCloseTo(kcal, within(tolerance));
    }

    /**
     * FAO/WHO/UNU 2004 Table 5.2 prints each equation in MJ, which the program uses, and in kcal. The kcal constants have one
     * decimal and slopes of three, the MJ constants three and three: at 80 kg they agree to 0.1 kcal.
     */
    @ParameterizedTest(name = "{0} from {1}")
    @CsvSource(textBlock = """
                    # sex, from age, kcal per kg, kcal
                    MALE,   18, 15.057, 692.2
                    MALE,   30, 11.472, 873.1
                    MALE,   60, 11.711, 587.7
                    FEMALE, 18, 14.818, 486.6
                    FEMALE, 30,  8.126, 845.6
                    FEMALE, 60,  9.082, 658.5
                    """)
    void schofield_in_mj_matches_the_kcal_column_of_the_same_table(Sex sex, int fromAge, double perKg, double kcal) {
        for (double kg : new double[] {45, 80, 110}) {
            for (double years : new double[] {fromAge, fromAge + 11.9}) {
                Body body = TestEater.body(sex, kg, 170, years);
                assertThat(Equations.kcal("Schofield 1985 (FAO/WHO/UNU), weight", body))
                        .isCloseTo(perKg * kg + kcal, within(0.1));
            }
        }
    }

    /** The paper prints the weight form in kJ as well: 49.940 W + 2459.053 H - 34.014 A + 799.257 s + 122.502. */
    @ParameterizedTest
    @CsvSource({"MALE, 80, 1.80, 25, 1", "FEMALE, 60, 1.70, 25, 0", "MALE, 95, 1.92, 34, 1"})
    void ten_haaf_in_kcal_matches_the_kj_form_of_the_paper(Sex sex, double kg, double metres, double years, double s) {
        double kj = 49.940 * kg + 2459.053 * metres - 34.014 * years + 799.257 * s + 122.502;
        assertThat(Equations.kcal("ten Haaf-Weijs 2014, weight", TestEater.body(sex, kg, metres * 100, years)))
                .isCloseTo(kj / 4.184, within(0.1));
    }

    /**
     * Mifflin et al. 1990 print the unrounded form too: 9.99 W + 6.25 H - 4.92 A + 166 s - 161. The simplified pair differs by
     * 0.01 W - 0.08 A: at most 6.24 kcal below, at 78 years.
     */
    @ParameterizedTest
    @CsvSource({"MALE, 80, 180, 30, 1", "FEMALE, 60, 165, 25, 0", "MALE, 70, 175, 78, 1", "FEMALE, 120, 160, 19, 0"})
    void mifflin_simplified_stays_near_the_full_form(Sex sex, double kg, double cm, double years, double s) {
        double full = 9.99 * kg + 6.25 * cm - 4.92 * years + 166 * s - 161;
        assertThat(Equations.kcal("Mifflin-St Jeor 1990", TestEater.body(sex, kg, cm, years)))
                .isCloseTo(full, within(6.24));
    }
}
