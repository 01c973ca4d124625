package batchwright.cli;

import batchwright.plan.Watch;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import java.io.PrintStream;
import java.time.Duration;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.Timer;
import java.util.TimerTask;
import java.util.function.BooleanSupplier;

/**
 * One line on a terminal, written over and over, that tells how far a search is; first after a second. Where nobody looks, nothing
 * is written.
 */
final class ProgressLine implements Watch, AutoCloseable {
    private static final Duration FIRST = Duration.ofSeconds(1);
    private static final Duration EVERY = Duration.ofMillis(200);

    private final PrintStream err;
    private final BooleanSupplier somebodyLooks;
    private final BooleanSupplier stop;
    private final long start = System.nanoTime();
    private final Timer timer = new Timer("progress", true);
    private Currency currency = Currency.USD;
    private Optional<Money> best = Optional.empty();
    private Optional<Money> bound = Optional.empty();
    private final Set<String> faults = new LinkedHashSet<>();
    private int written;

    /**
     * @param somebodyLooks whether {@code err} is a terminal; asked when there is something to write
     * @param stop whether to end the search
     */
    ProgressLine(PrintStream err, BooleanSupplier somebodyLooks, BooleanSupplier stop) {
        this.err = err;
        this.somebodyLooks = somebodyLooks;
        this.stop = stop;
    }

    ProgressLine start() {
        timer.schedule(
                new TimerTask() {
                    private boolean first = true;

                    @Override
                    public void run() {
                        if (first && !somebodyLooks.getAsBoolean()) {
                            cancel();
                        } else {
                            first = false;
                            write();
                        }
                    }
                },
                FIRST.toMillis(),
                EVERY.toMillis());
        return this;
    }

    @Override
    public synchronized void paidIn(Currency all) {
        currency = all;
    }

    @Override
    public synchronized void found(Money cost) {
        best = Optional.of(cost);
    }

    @Override
    public synchronized void bound(Money proven) {
        bound = Optional.of(proven);
    }

    @Override
    public boolean stop() {
        return stop.getAsBoolean();
    }

    @Override
    public synchronized void wrong(String what) {
        faults.add(what);
    }

    /** What was wrong with plans that were found and are not shown. */
    synchronized List<String> faults() {
        return List.copyOf(faults);
    }

    private synchronized void write() {
        Duration elapsed = Duration.ofNanos(System.nanoTime() - start);
        String text = Progress.says(elapsed, best, bound, currency, stop.getAsBoolean());
        clear();
        err.print(text);
        err.flush();
        written = text.length();
    }

    private void clear() {
        if (written > 0) {
            err.print('\r' + " ".repeat(written) + '\r');
            err.flush();
            written = 0;
        }
    }

    /** Leaves nothing behind on the terminal. */
    @Override
    public void close() {
        timer.cancel();
        synchronized (this) {
            clear();
            written = 0;
        }
    }
}
