package batchwright.needs.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Energy is neither made nor lost: eaten = burnt + stored. What is burnt is written here as Hall et al. 2011 print it, with the
 * cost of building tissue on the right; the program uses a form solved for EE. Numbers, not names, so that a wrong one shows.
 */
class EnergyBalanceTest {
    private static final double RELATIVE = 1e-6;

    /** The model, and what is burnt since the start as a further figure [kJ]. */
    private record WithExpenditure(Baseline baseline, double changeKj, Hall2011 model)
            implements FirstOrderDifferentialEquations {
        @Override
        public int getDimension() {
            return model.getDimension() + 1;
        }

        @Override
        public void computeDerivatives(double day, double[] y, double[] yDot) {
            double[] body = new double[model.getDimension()];
            model.computeDerivatives(day, Arrays.copyOf(y, body.length), body);
            System.arraycopy(body, 0, yDot, 0, body.length);
            BodyState now = BodyState.of(y);
            yDot[body.length] = baseline.constantKj()
                    + 13 * now.fatKg()
                    + 92 * now.tissueKg()
                    + baseline.activityKj() * now.weightKg()
                    + 0.1 * changeKj
                    + now.adaptationKj()
                    + 960 * body[1]
                    + 750 * body[0];
        }
    }

    private static double storedKj(BodyState body) {
        return 39_500 * body.fatKg() + 7_600 * body.tissueKg() + 17_600 * body.glycogenKg();
    }

    @ParameterizedTest(name = "{4} kcal for {5} days")
    @CsvSource({
        "100, 29.6, 2898, 1.5, -500, 7",
        "100, 29.6, 2898, 1.5, -500, 728",
        "75, 13.2, 2964, 1.7, 350, 84",
        "75, 13.2, 2964, 1.7, 350, 728",
        "60, 15.5, 2115, 1.0, -300, 365",
        "80, 20, 2600, 1.55, 0, 365"
    })
    void eaten_is_burnt_and_stored(
            double kg, double fatKg, double totalKcal, double pal, double changeKcal, double days) {
        Baseline baseline = Bodies.of(kg, fatKg, totalKcal, pal);
        double changeKj = changeKcal * 4.184;
        var model = new WithExpenditure(baseline, changeKj, Bodies.model(baseline, changeKcal));
        double[] then = Integration.FINE.after(
                days, model, Arrays.copyOf(baseline.start().figures(), 6));

        double eaten = (baseline.intakeKj() + changeKj) * days;
        double stored = storedKj(BodyState.of(then)) - storedKj(baseline.start());

        assertThat((then[5] + stored) / eaten).isCloseTo(1, within(RELATIVE));
    }
}
