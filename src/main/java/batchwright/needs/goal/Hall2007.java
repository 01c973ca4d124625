package batchwright.needs.goal;

import batchwright.quantity.Mass;

/**
 * How a change of weight is shared between fat and lean tissue. Fat mass goes from F to G when weight changes by B:
 * G - F + 10.4 ln(G / F) = B [kg], which is Forbes' curve FFM = 10.4 ln(FM) + constant followed over the whole change.
 *
 * <p>Forbes' curve is of women, measured once; 10.4 kg is what carries over to change. Training with weights and much protein keep
 * more lean tissue in a deficit than this says.
 *
 * <p>Source: Hall KD. Body fat and fat-free mass inter-relationships: Forbes's theory revisited. Br J Nutr 2007;97:1059-1063 (title
 * and form from memory); Forbes GB. Nutr Rev 1987;45:225-231.
 *
 * <p>Departures: the paper writes G with Lambert's W function; the same root is found by Newton's method.
 */
public final class Hall2007 {
    static final double FORBES_KG = 10.4; // Forbes 1987

    private static final int MOST_STEPS = 100;
    private static final double CLOSE_KG = 1e-12;

    private Hall2007() {}

    /** How much of a change of weight is fat [kg]; of the same sign as the change. */
    public static double fatChangeKg(Mass fat, double changeKg) {
        double before = fat.kg();
        // Below the root; the curve bends downwards, so that each step of Newton's stays below it and comes nearer.
        double after = before * Math.exp(Math.min(0, changeKg) / FORBES_KG);
        for (int i = 0; i < MOST_STEPS; i++) {
            double missing = changeKg - (after - before + FORBES_KG * Math.log(after / before));
            double step = missing / (1 + FORBES_KG / after);
            after += step;
            if (Math.abs(step) < CLOSE_KG) {
                break;
            }
        }
        return after - before;
    }
}
