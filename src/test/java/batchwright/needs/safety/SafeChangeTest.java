package batchwright.needs.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.TestEater;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The caps worked out by hand from figures.csv, whose sources stand beside them. */
class SafeChangeTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // name, age, kg, cm, total, kg a week, kcal a day
        "'1 % of weight, 25 % of the total', 30, 70, 175, 2400, 0.70, 600",
        "'1 kg a week, 1000 kcal', 30, 130, 200, 4400, 1.00, 1000",
        "'25 % of the total at BMI 40', 30, 115.6, 170, 2000, 1.00, 500",
        "'500 kcal from 65 years on', 65, 115.6, 170, 2400, 1.00, 500"
    })
    void loss(String name, int age, double kg, double cm, double total, double kgAWeek, double kcal) {
        SafeChange most = SafeChange.ofLoss(body(age, kg, cm), new Energy(total));

        assertThat(most.kgAWeek()).isCloseTo(kgAWeek, within(1e-9));
        assertThat(most.kcalADay()).isCloseTo(kcal, within(1e-9));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "'underweight: in steps', 52, 170, 2200, 0.52, 500",
        "'no limit in kcal in between', 70, 170, 2200, 0.70, Infinity",
        "'obese: 20 % of the total', 86.7, 170, 2200, 0.867, 440",
        "'obese: 500 kcal', 86.7, 170, 2700, 0.867, 500"
    })
    void gain(String name, double kg, double cm, double total, double kgAWeek, double kcal) {
        SafeChange most = SafeChange.ofGain(body(30, kg, cm), new Energy(total));

        assertThat(most.kgAWeek()).isCloseTo(kgAWeek, within(1e-9));
        assertThat(most.kcalADay()).isEqualTo(kcal);
    }

    @ParameterizedTest(name = "{0} years: BMI {1}")
    @CsvSource({"18, 18.5", "64.9, 18.5", "65, 20", "69.9, 20", "70, 22"})
    void least_bmi_at_the_end(double years, double bmi) {
        SafeEnd end = SafeEnd.of(body(years, 70, 170));

        assertThat(end.bmi()).isEqualTo(bmi);
    }

    @ParameterizedTest
    @EnumSource
    void every_figure_has_a_value_and_a_source(SafetyFigure figure) {
        assertThat(figure.value()).isPositive();
        assertThat(figure.source().text()).isNotBlank();
    }

    private static Body body(double years, double kg, double cm) {
        return TestEater.body(Sex.FEMALE, kg, cm, years);
    }
}
