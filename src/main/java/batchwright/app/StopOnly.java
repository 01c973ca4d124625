package batchwright.app;

import batchwright.plan.Watch;
import batchwright.quantity.Money;

/** May stop a search as another may, but tells it nothing: costs of changed requests would only confuse. */
record StopOnly(Watch watch) implements Watch {
    @Override
    public void found(Money cost) {}

    @Override
    public void bound(Money bound) {}

    @Override
    public boolean stop() {
        return watch.stop();
    }
}
