package batchwright.needs.resting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.TestEater;
import batchwright.person.Sex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Arithmetic on the equations as printed: guards the code, proves nothing about the equations. */
class RestingEnergyRegressionTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/regression/resting_energy.csv", useHeadersInDisplayName = true)
    void matches_the_arithmetic(
            String where,
            String equation,
            Sex sex,
            double kg,
            double cm,
            double years,
            Double fatPercent,
            double kcal,
            double tolerance) {
        assertThat(Equations.kcal(equation, TestEater.body(sex, kg, cm, years, fatPercent)))
                .as(where)
                .isCloseTo(kcal, within(tolerance));
    }
}
