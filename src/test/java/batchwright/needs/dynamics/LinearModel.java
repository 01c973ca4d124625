package batchwright.needs.dynamics;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;

/**
 * The model of Hall and Chow (Am J Clin Nutr 2011;94:66-74) for small changes, which has a closed form: rho dW/dt = dEI - eps (W - W0).
 * Form seen in a published supplement; parameters in kcal and kg: gamma 3.2 and 22, eta 180 and 230, beta 0.24 (seen), rho 9441
 * and 1816 (the second from memory). alpha = 10.4 / FM, delta = [0.9 PAL - 1] R / W0. W0 counts as 0 here.
 */
record LinearModel(double rho, double epsilon, double changeKcal) implements FirstOrderDifferentialEquations {
    static LinearModel of(double kg, double fatKg, double restingKcal, double pal, double changeKcal) {
        double alpha = 10.4 / fatKg;
        double delta = (0.9 * pal - 1) * restingKcal / kg;
        double rho = (180 + 9441 + alpha * (230 + 1816)) / (1 - 0.24) / (1 + alpha);
        double epsilon = ((3.2 + alpha * 22) / (1 + alpha) + delta) / (1 - 0.24);
        return new LinearModel(rho, epsilon, changeKcal);
    }

    double closedForm(double days) {
        return changeKcal / epsilon * (1 - Math.exp(-days * epsilon / rho));
    }

    @Override
    public int getDimension() {
        return 1;
    }

    @Override
    public void computeDerivatives(double day, double[] y, double[] yDot) {
        yDot[0] = (changeKcal - epsilon * y[0]) / rho;
    }
}
