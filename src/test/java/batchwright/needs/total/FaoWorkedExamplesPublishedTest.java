package batchwright.needs.total;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.TestEater;
import batchwright.needs.resting.Schofield1985Weight;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked examples of FAO/WHO/UNU, Human energy requirements, Rome 2004, section 5: BMR, then BMR x PAL. The publication rounds the
 * BMR to 0.01 MJ and goes on from there; the program rounds only for display. The first two were seen, the others are from
 * memory, and their BMR is printed to about 0.05 MJ.
 */
class FaoWorkedExamplesPublishedTest {
    @ParameterizedTest(name = "{0} of {1} kg, PAL {3}")
    @CsvSource(textBlock = """
                    # sex, kg, years, PAL, printed BMR MJ, BMR kcal, TEE MJ, TEE kcal, kJ per kg, kcal per kg, BMR printed to MJ
                    FEMALE, 55, 25, 1.85, 5.45, 1302, 10.08, 2410, 183, 44, 0.007
                    MALE,   70, 22, 2.25, 7.30, 1745, 16.42, 3925, 235, 56, 0.007
                    FEMALE, 55, 40, 1.53, 5.40, 1290,  8.26, 1975, 150, 36, 0.03
                    FEMALE, 57, 22, 1.76, 5.60, 1338,  9.86, 2355, 173, 41, 0.03
                    """)
    void match(
            Sex sex,
            double kg,
            double years,
            double pal,
            double bmrMj,
            double bmrKcal,
            double totalMj,
            double totalKcal,
            double kjPerKg,
            double kcalPerKg,
            double withinMj) {
        Energy bmr = new Schofield1985Weight()
                .perDay(TestEater.body(sex, kg, 170, years))
                .orElseThrow();
        Energy total = bmr.times(pal);
        double withinKcal = withinMj * 1000 / Energy.KJ_PER_KCAL;

        assertThat(bmr.kilojoules() / 1000).isCloseTo(bmrMj, within(withinMj));
        assertThat(bmr.kcal()).isCloseTo(bmrKcal, within(withinKcal + 0.5));
        assertThat(total.kilojoules() / 1000).isCloseTo(totalMj, within(withinMj * pal + 0.005));
        assertThat(total.kcal()).isCloseTo(totalKcal, within(withinKcal * pal + 2.5)); // printed in steps of five
        // The publication's own steps, from the BMR as printed.
        assertThat(bmrMj * pal).isCloseTo(totalMj, within(0.0051));
        assertThat(Math.round(Energy.ofKilojoules(totalMj * 1000).kcal() / 5) * 5.0)
                .isEqualTo(totalKcal);
        assertThat(total.kilojoules() / kg).isCloseTo(kjPerKg, within(withinMj * 1000 * pal / kg + 0.5));
        assertThat(total.kcal() / kg).isCloseTo(kcalPerKg, within(withinKcal * pal / kg + 0.5));
    }
}
