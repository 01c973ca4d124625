package batchwright.solve;

import batchwright.solve.mip.StepBudget;
import batchwright.solve.mip.Stop;

/**
 * Ends a search by what it does alone, never by the clock.
 *
 * @param nodes that may be looked at
 * @param trials relaxations that may be solved besides
 * @param meter all work; ends what is too large for a single node
 */
record StepsOnly(StepBudget nodes, StepBudget trials, Meter meter) implements Stop {
    @Override
    public boolean requested() {
        return nodes.isSpent();
    }

    @Override
    public boolean urgent() {
        return trials.isSpent();
    }

    @Override
    public void spendNode() {
        nodes.spend();
    }

    @Override
    public void spendTrial() {
        trials.spend();
    }

    @Override
    public void spend(long work) {
        meter.spend(work);
    }
}
