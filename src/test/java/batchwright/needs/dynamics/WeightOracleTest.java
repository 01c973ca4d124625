package batchwright.needs.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.quantity.Energy;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Random bodies against a program written apart, src/test/oracles/weight_dynamics.py: where an intake leads, to 1 g; and which intake
 * leads to a weight, to 0.1 kcal a day.
 */
class WeightOracleTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/oracles/weight_dynamics.csv", useHeadersInDisplayName = true)
    void agrees_with_a_program_written_apart(
            double kg,
            double fatKg,
            double totalKcal,
            double pal,
            double changeKcal,
            double days,
            double kgThen,
            double fatKgThen,
            double rateKgAWeek,
            double kcalForRate,
            double reachKg,
            double reachDays,
            double kcalToReach) {
        var model = new BodyModel(Bodies.of(kg, fatKg, totalKcal, pal));
        BodyState then = model.after(days, new Energy(totalKcal + changeKcal), model.start());
        assertThat(then.weightKg()).isCloseTo(kgThen, within(0.001));
        assertThat(then.fatKg()).isCloseTo(fatKgThen, within(0.001));

        assertThat(model.intakeFor(kg + 4 * rateKgAWeek, 28, model.start()).orElseThrow())
                .isCloseTo(kcalForRate, within(0.1));
        assertThat(model.intakeFor(reachKg, reachDays, model.start()).orElseThrow())
                .isCloseTo(kcalToReach, within(0.1));
    }
}
