package batchwright.needs.dynamics;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * Follows differential equations through time by the method of Dormand and Prince of order 8 (Hairer, Norsett and Wanner), which
 * chooses its steps so that the error of each stays below a tolerance.
 *
 * @param tolerance most error of a step, in the unit of each figure and as a share of it
 */
record Integration(double tolerance) {
    /** Far below a printed digit: 0.1 kg. */
    static final Integration FINE = new Integration(1e-9);

    private static final double SHORTEST_STEP_DAYS = 1e-6;
    private static final double LONGEST_STEP_DAYS = 28;

    /** Figures after so many days, more than 0, from those now. */
    double[] after(double days, FirstOrderDifferentialEquations equations, double[] now) {
        var integrator = new DormandPrince853Integrator(SHORTEST_STEP_DAYS, LONGEST_STEP_DAYS, tolerance, tolerance);
        double[] then = new double[now.length];
        integrator.integrate(equations, 0, now, days, then);
        return then;
    }
}
