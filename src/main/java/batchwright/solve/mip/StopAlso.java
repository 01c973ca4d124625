package batchwright.solve.mip;

import java.util.function.BooleanSupplier;

/**
 * Stops for one more reason.
 *
 * @param node told of each node
 */
record StopAlso(Stop first, BooleanSupplier also, Runnable node) implements Stop {
    @Override
    public boolean requested() {
        return also.getAsBoolean() || first.requested();
    }

    @Override
    public boolean urgent() {
        return first.urgent();
    }

    @Override
    public void spendNode() {
        node.run();
        first.spendNode();
    }

    @Override
    public void spendTrial() {
        first.spendTrial();
    }

    @Override
    public void spend(long work) {
        first.spend(work);
    }
}
