package batchwright.needs.dynamics;

import batchwright.quantity.Energy;
import batchwright.quantity.Mass;
import org.apache.commons.math3.ode.nonstiff.ClassicalRungeKuttaIntegrator;

/** A body that eats another amount each day, by {@link Hall2011}; quick, for tests with many people. */
public final class DailyBody {
    /** The quickest figure, extracellular fluid, has a time constant of a day. */
    private static final double STEP_DAYS = 0.5;

    private static final ClassicalRungeKuttaIntegrator RUNGE_KUTTA = new ClassicalRungeKuttaIntegrator(STEP_DAYS);

    private final Baseline baseline;
    private BodyState now;

    /** @param total energy a day that holds the weight */
    public DailyBody(Mass weight, Mass fat, Energy total, double pal) {
        this.baseline = Baseline.of(weight, fat, total, pal);
        this.now = baseline.start();
    }

    public void eat(Energy intake) {
        var equations = new Hall2011(baseline, intake);
        double[] figures = now.figures();
        for (double day = 0; day < 1; day += STEP_DAYS) {
            figures = RUNGE_KUTTA.singleStep(equations, day, figures, day + STEP_DAYS);
        }
        now = BodyState.of(figures);
    }

    public BodyState now() {
        return now;
    }

    public Energy total() {
        return Energy.ofKilojoules(baseline.intakeKj());
    }

    public Energy holding() {
        return new BodyModel(baseline).holding(now);
    }
}
