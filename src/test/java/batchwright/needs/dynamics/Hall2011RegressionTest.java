package batchwright.needs.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Arithmetic, not published: the equations integrated apart from this program (fourth order Runge and Kutta, steps of 0.05 and
 * 0.5 days agree to 0.001 kg). It catches slips in the code, not a parameter that was noted wrongly. Resting energy by Mifflin et
 * al. in the unrounded form, fat by Jackson et al. 2002, 50 % of energy from carbohydrate.
 */
class Hall2011RegressionTest {
    private static final double TOLERANCE_KG = 0.05;
    private static final double END_DAYS = 50 * 365;

    @ParameterizedTest(name = "{0}, {6} days")
    @CsvSource(textBlock = """
        # case,         kg,  PAL, total kcal, fat kg, change kcal, days, kg then, fat kg then
        A: man 40 y,   100, 1.5, 2898.3, 29.618, -500,   28, 98.17, 28.56
        A: man 40 y,   100, 1.5, 2898.3, 29.618, -500,  182, 91.85, 24.03
        A: man 40 y,   100, 1.5, 2898.3, 29.618, -500,  365, 86.40, 20.33
        A: man 40 y,   100, 1.5, 2898.3, 29.618, -500, 1095, 77.76, 14.91
        A: man 40 y,   100, 1.5, 2898.3, 29.618, -500,     , 76.24, 14.03
        B: woman 35 y,  80, 1.5, 2245.9, 30.379, -500,   28, 78.07, 29.33
        B: woman 35 y,  80, 1.5, 2245.9, 30.379, -500,  182, 71.76, 24.77
        B: woman 35 y,  80, 1.5, 2245.9, 30.379, -500,  365, 66.28, 21.01
        B: woman 35 y,  80, 1.5, 2245.9, 30.379, -500, 1095, 57.36, 15.35
        B: woman 35 y,  80, 1.5, 2245.9, 30.379, -500,     , 55.70, 14.38
        C: man 25 y,    75, 1.7, 2964.4, 13.214,  350,   28, 76.44, 13.88
        C: man 25 y,    75, 1.7, 2964.4, 13.214,  350,  182, 80.71, 16.41
        C: man 25 y,    75, 1.7, 2964.4, 13.214,  350,  365, 83.46, 18.12
        C: man 25 y,    75, 1.7, 2964.4, 13.214,  350, 1095, 86.49, 20.08
        C: man 25 y,    75, 1.7, 2964.4, 13.214,  350,     , 86.82, 20.31
        D: woman 30 y,  60, 1.6, 2115.3, 15.467, -300,   28, 58.70, 14.89
        D: woman 30 y,  60, 1.6, 2115.3, 15.467, -300,  182, 54.79, 12.66
        D: woman 30 y,  60, 1.6, 2115.3, 15.467, -300,  365, 52.06, 11.21
        D: woman 30 y,  60, 1.6, 2115.3, 15.467, -300, 1095, 49.35,  9.84
        D: woman 30 y,  60, 1.6, 2115.3, 15.467, -300,     , 49.18,  9.76
        """)
    void weight_and_fat(
            String who,
            double kg,
            double pal,
            double totalKcal,
            double fatKg,
            double change,
            Double days,
            double kgThen,
            double fatKgThen) {
        Baseline baseline = Bodies.of(kg, fatKg, totalKcal, pal);
        BodyState then = Bodies.after(days == null ? END_DAYS : days, baseline, change);

        assertThat(then.weightKg()).isCloseTo(kgThen, within(TOLERANCE_KG));
        assertThat(then.fatKg()).isCloseTo(fatKgThen, within(TOLERANCE_KG));
    }

    @ParameterizedTest
    @CsvSource({
        "100, 29.618, 2898.3, 1.5, 28.295",
        "80, 30.379, 2245.9, 1.5, 27.407",
        "75, 13.214, 2964.4, 1.7, 51.557",
        "60, 15.467, 2115.3, 1.6, 40.564"
    })
    void activity_in_kj_per_kg(double kg, double fatKg, double totalKcal, double pal, double kj) {
        assertThat(Bodies.of(kg, fatKg, totalKcal, pal).activityKj()).isCloseTo(kj, within(0.001));
    }
}
