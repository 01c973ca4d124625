package batchwright.needs.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The integrator against what can be solved on paper, and against itself. */
class IntegrationTest {
    private static final double CLOSE = 1e-6;

    private static final Baseline MAN = Bodies.of(100, 29.6, 2900, 1.5);

    @ParameterizedTest(name = "{4} kcal: {6} kg after {5} days")
    @CsvSource(textBlock = """
        # kg, fat kg, resting kcal, PAL, change kcal, days, kg (arithmetic on the closed form; printed to 0.01 kg)
        100, 30, 1932, 1.5, -500,   28,  -1.35
        100, 30, 1932, 1.5, -500,  182,  -7.60
        100, 30, 1932, 1.5, -500,  365, -12.98
        100, 30, 1932, 1.5, -500, 1095, -22.57
         75, 15, 1744, 1.7,  350,   28,   1.09
         75, 15, 1744, 1.7,  350,  182,   5.46
         75, 15, 1744, 1.7,  350,  365,   8.33
         75, 15, 1744, 1.7,  350, 1095,  11.22
        """)
    void meets_the_closed_form_of_the_linear_model(
            double kg, double fatKg, double resting, double pal, double change, double days, double expected) {
        LinearModel model = LinearModel.of(kg, fatKg, resting, pal, change);
        double integrated = Integration.FINE.after(days, model, new double[] {0})[0];

        assertThat(integrated).isCloseTo(model.closedForm(days), within(CLOSE));
        assertThat(integrated).isCloseTo(expected, within(0.006));
    }

    /**
     * Two models check each other: the linear one knows no water of glycogen and salt, and keeps the first share of fat for ever. They
     * part by 0.6 kg at most in a year (measured).
     */
    @ParameterizedTest
    @CsvSource({"100, 30, 1932, 1.5, -500", "75, 15, 1744, 1.7, 350", "72, 24, 1410, 1.75, -300"})
    void the_full_model_stays_near_the_linear_one_for_a_year(
            double kg, double fatKg, double resting, double pal, double change) {
        LinearModel linear = LinearModel.of(kg, fatKg, resting, pal, change);
        Baseline baseline = Bodies.of(kg, fatKg, resting * pal, pal);
        for (int week = 4; week <= 52; week++) {
            double full = Bodies.after(week * 7, baseline, change).weightKg() - kg;
            assertThat(full).isCloseTo(linear.closedForm(week * 7), within(1.0));
        }
    }

    /** tau dAT/dt = beta dEI - AT has the closed form beta dEI (1 - e^(-t/tau)); beta 0.14, tau 14 d. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 7, 14, 84, 728})
    void adaptive_thermogenesis_meets_its_closed_form(double days) {
        double closed = 0.14 * -500 * 4.184 * (1 - Math.exp(-days / 14));

        assertThat(Bodies.after(days, MAN, -500).adaptationKj()).isCloseTo(closed, within(CLOSE));
    }

    /**
     * 3220 dX/dt = -3000 X - 4000 (1 - CI/CI_b) has the closed form -(4/3) (1 - CI/CI_b) (1 - e^(-3000 t/3220)). Five hundred of
     * 2900 kcal less leave 1 - 500/2900 of the carbohydrate.
     */
    @ParameterizedTest
    @ValueSource(doubles = {1, 3, 7, 28})
    void extracellular_fluid_meets_its_closed_form(double days) {
        double closed = -4.0 / 3 * 500 / 2900 * (1 - Math.exp(-3000 * days / 3220));

        assertThat(Bodies.after(days, MAN, -500).fluidKg()).isCloseTo(closed, within(CLOSE));
    }

    /**
     * rho dG/dt = CI - k G^2 from G0 above its end g = sqrt(CI/k) has the closed form g coth(t sqrt(CI k)/rho + c), coth c = G0/g;
     * and with tanh from below. Half of 2900 kcal from carbohydrate, k = CI_b / 0.25 kg2, rho 17.6 MJ/kg.
     */
    @ParameterizedTest
    @CsvSource({"-500, 1", "-500, 7", "-500, 84", "400, 1", "400, 7", "400, 84"})
    void glycogen_meets_its_closed_form(double changeKcal, double days) {
        double before = 0.5 * 2900 * 4.184;
        double after = 0.5 * (2900 + changeKcal) * 4.184;
        double k = before / 0.25;
        double end = Math.sqrt(after / k);
        boolean falls = changeKcal < 0;
        double ratio = falls ? end / 0.5 : 0.5 / end; // tanh c
        double c = 0.5 * Math.log((1 + ratio) / (1 - ratio));
        double tanh = Math.tanh(days * Math.sqrt(after * k) / 17_600 + c);

        assertThat(Bodies.after(days, MAN, changeKcal).glycogenKg())
                .isCloseTo(falls ? end / tanh : end * tanh, within(CLOSE));
    }

    /** A gram is a hundredth of what is printed. */
    @Test
    void a_tolerance_halved_or_doubled_and_more_changes_nothing_that_is_printed() {
        Hall2011 model = Bodies.model(MAN, -500);
        double[] fine = Integration.FINE.after(728, model, MAN.start().figures());
        for (double tolerance : new double[] {0.5e-9, 2e-9, 1e-6, 1e-12}) {
            double[] other =
                    new Integration(tolerance).after(728, model, MAN.start().figures());
            assertThat(BodyState.of(other).weightKg())
                    .isCloseTo(BodyState.of(fine).weightKg(), within(0.001));
            assertThat(BodyState.of(other).fatKg()).isCloseTo(BodyState.of(fine).fatKg(), within(0.001));
        }
    }

    /** Weeks, days or all at once: the same path. */
    @Test
    void steps_of_a_day_lead_to_the_same_body_as_one_of_two_years() {
        BodyState now = MAN.start();
        for (int day = 0; day < 728; day++) {
            now = Bodies.after(1, MAN, -500, now);
        }

        assertThat(now.weightKg()).isCloseTo(Bodies.after(728, MAN, -500).weightKg(), within(CLOSE));
    }
}
