package batchwright.needs.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EnergyPerKgTest {
    /** Hall 2008 finds that the rule of thumb holds from about 30 kg of body fat on, and is too high for leaner people. */
    @Test
    void the_rule_meets_body_composition_at_about_30_kg_of_fat() {
        assertThat(EnergyPerKg.byComposition(new Mass(30)) / EnergyPerKg.RULE_KCAL)
                .isBetween(0.95, 1.05);
        assertThat(EnergyPerKg.byComposition(new Mass(10))).isLessThan(EnergyPerKg.RULE_KCAL);
    }

    /** Arithmetic: (39.5 FM + 7.6 x 10.4) / (10.4 + FM) MJ/kg, worked out with kcal rounded per kg: within 1 kcal. */
    @ParameterizedTest
    @CsvSource({"10, 5554", "20, 6832", "30, 7478", "40, 7868"})
    void body_composition_follows_forbes(double fatKg, double kcal) {
        assertThat(EnergyPerKg.byComposition(new Mass(fatKg))).isCloseTo(kcal, within(1.0));
    }

    /**
     * Arithmetic on Hall's form with 39.5 and 7.6 MJ/kg, done apart from this program: fat mass before, change of weight, mean kcal
     * per kg over the change, rounded: within 1 kcal.
     */
    @ParameterizedTest
    @CsvSource({"30, -10, 7278", "20, -5, 6683", "15, 5, 6491", "40, -20, 7565"})
    void a_large_change_has_its_own_mean(double fatKg, double changeKg, double kcal) {
        assertThat(EnergyPerKg.byComposition(new Mass(fatKg), changeKg)).isCloseTo(kcal, within(1.0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-4, -1e-4})
    void a_change_that_gets_small_is_a_small_change(double changeKg) {
        Mass fat = new Mass(20);
        assertThat(EnergyPerKg.byComposition(fat, changeKg)).isCloseTo(EnergyPerKg.byComposition(fat), within(0.1));
    }
}
