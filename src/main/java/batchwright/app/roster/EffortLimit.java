package batchwright.app.roster;

import batchwright.plan.Watch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;

/** Ends a search by the work it has done, which is the same on every machine; or when the whole run ends, and remembers that. */
final class EffortLimit implements Watch {
    private final long most;
    private final BooleanSupplier ends;
    private final AtomicBoolean cutShort = new AtomicBoolean();

    /** @param most as {@link Watch#stop(long)} counts it */
    EffortLimit(long most, BooleanSupplier ends) {
        this.most = most;
        this.ends = ends;
    }

    /** Whether an answer would be another one if the run had gone on. */
    boolean isCutShort() {
        return cutShort.get();
    }

    @Override
    public boolean stop() {
        if (ends.getAsBoolean()) {
            cutShort.set(true);
        }
        return cutShort.get();
    }

    @Override
    public boolean stop(long work) {
        return work > most || stop();
    }
}
