package batchwright.needs.dynamics;

import batchwright.quantity.Energy;
import batchwright.quantity.Mass;

/** Bodies for tests of the model, and where an intake leads them. */
final class Bodies {
    private Bodies() {}

    static Baseline of(double kg, double fatKg, double totalKcal, double pal) {
        return Baseline.of(new Mass(kg), new Mass(fatKg), new Energy(totalKcal), pal);
    }

    /** After so many days of eating so much more (positive) or less than what holds the weight. */
    static BodyState after(double days, Baseline baseline, double changeKcal) {
        return after(days, baseline, changeKcal, baseline.start());
    }

    static BodyState after(double days, Baseline baseline, double changeKcal, BodyState from) {
        return BodyState.of(Integration.FINE.after(days, model(baseline, changeKcal), from.figures()));
    }

    static Hall2011 model(Baseline baseline, double changeKcal) {
        return new Hall2011(
                baseline, new Energy(Energy.ofKilojoules(baseline.intakeKj()).kcal() + changeKcal));
    }
}
