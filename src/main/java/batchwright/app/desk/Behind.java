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
            public void answered(PlanAnswer answer) {}

            @Override
            public void failed(RuntimeException fault) {}
        };

        void progress(Progress progress);

        /** The end. */
        void answered(PlanAnswer answer);

        /** The end, too: what was asked is refused, or there is a fault. */
        void failed(RuntimeException fault);
    }

    /**
     * How far a search is.
     *
     * @param cost of the cheapest plan so far
     * @param bound no plan costs less
     */
    public record Progress(Optional<Money> cost, Money bound) {}

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
                if (!ended.get()) {
                    listener.answered(answer);
                }
            } catch (RuntimeException fault) {
                if (!ended.get()) {
                    listener.failed(fault);
                }
            }
        }

        @Override
        public void found(Money cost) {
            tell(new Progress(Optional.of(cost), progress.bound()));
        }

        @Override
        public void bound(Money bound) {
            tell(new Progress(progress.cost(), bound));
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
