package batchwright.app.desk;

import batchwright.answer.PlanAnswer;
import batchwright.plan.Watch;
import batchwright.quantity.Money;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * The whole search behind the quick answers of a desk, in one thread of its own: it begins with the newest position of the sliders and
 * ends at once, without an answer, when there is a newer one. To be closed with the desk.
 */
public final class Behind implements AutoCloseable {
    private final Desk desk;
    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> {
        var daemon = new Thread(work, "desk-search");
        daemon.setDaemon(true);
        return daemon;
    });
    private Run newest = new Run(Listener.NONE);

    /** Told, in the thread of the search, how far it is. Nothing more is told once a newer search has begun. */
    public interface Listener {
        /** Hears nothing. */
        Listener NONE = new Listener() {
            @Override
            public void progress(Progress progress) {}

            @Override
            public void answered(PlanAnswer answer, boolean isLast) {}

            @Override
            public void failed(Throwable fault) {}
        };

        void progress(Progress progress);

        /** @param isLast whether this is the end: if not, there is no plan, and the reasons are looked for */
        void answered(PlanAnswer answer, boolean isLast);

        /** The end, too: what was asked is refused, or there is a fault. */
        void failed(Throwable fault);
    }

    /**
     * How far a search is; costs only fall, bounds only rise.
     *
     * @param cost of the cheapest plan so far
     * @param bound no plan costs less
     */
    public record Progress(Optional<Money> cost, Money bound) {
        private Progress found(Money other) {
            return new Progress(
                    Optional.of(cost.filter(best -> best.compareTo(other) <= 0).orElse(other)), bound);
        }

        private Progress proven(Money other) {
            return bound.compareTo(other) >= 0 ? this : new Progress(cost, other);
        }
    }

    public Behind(Desk desk) {
        this.desk = desk;
    }

    /** Begins; what is under way for an older position ends. */
    public synchronized Future<?> begin(Sliders sliders, Listener listener) {
        newest.end();
        var run = new Run(listener);
        newest = run;
        return thread.submit(() -> run.search(desk, sliders));
    }

    /** Ends what is under way; its listener is told nothing more. */
    public synchronized void stop() {
        newest.end();
    }

    @Override
    public void close() {
        stop();
        thread.shutdown();
    }

    /** One search. */
    private static final class Run implements Watch {
        private final Listener listener;
        private final AtomicBoolean ended = new AtomicBoolean();
        private Progress progress = new Progress(Optional.empty(), Money.ZERO);

        Run(Listener listener) {
            this.listener = listener;
        }

        void end() {
            ended.set(true);
        }

        void search(Desk desk, Sliders sliders) {
            if (ended.get()) {
                return;
            }
            try {
                PlanAnswer answer = desk.full(sliders, this);
                boolean asksWhy = answer.status() == PlanAnswer.Status.NO_PLAN && !answer.stoppedByCaution();
                told(answer, !asksWhy);
                if (asksWhy && !ended.get()) {
                    told(desk.reasons(sliders, this), true);
                }
            } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
                if (!ended.get()) {
                    listener.failed(fault);
                }
            }
        }

        private void told(PlanAnswer answer, boolean isLast) {
            if (!ended.get()) {
                listener.answered(answer, isLast);
            }
        }

        @Override
        public void found(Money cost) {
            tell(progress.found(cost));
        }

        @Override
        public void bound(Money bound) {
            tell(progress.proven(bound));
        }

        private void tell(Progress now) {
            progress = now;
            if (!ended.get()) {
                listener.progress(now);
            }
        }

        @Override
        public boolean stop() {
            return ended.get();
        }
    }
}
