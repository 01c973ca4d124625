package batchwright.app.roster;

import java.util.ArrayDeque;
import java.util.Iterator;
import java.util.Queue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Works on many items with some threads, and hands on the results from one. Only a few items are in hand at a time, however many there are.
 *
 * @param threads how many items are worked on at once
 * @param inOrder whether results come in the order of the items, or as soon as they are there
 */
record InParallel(int threads, boolean inOrder) {
    /** Items in hand for each thread: enough that none waits for a long one before it. */
    private static final int IN_HAND = 8;

    /**
     * Ends when there are no more items, or nothing more shall be begun; what was begun is finished.
     *
     * @param work must not throw
     */
    <T, R> void run(Iterator<T> items, Function<T, R> work, BooleanSupplier enough, Consumer<R> results) {
        ExecutorService workers = Executors.newFixedThreadPool(threads, task -> {
            var thread = new Thread(task, "roster");
            thread.setDaemon(true);
            return thread;
        });
        try {
            Hand<R> hand = inOrder ? new Line<>() : new Heap<>();
            while (items.hasNext() && !enough.getAsBoolean()) {
                T item = items.next();
                hand.begin(workers, () -> work.apply(item));
                if (hand.size() >= IN_HAND * threads) {
                    results.accept(hand.take());
                }
            }
            while (hand.size() > 0) {
                results.accept(hand.take());
            }
        } finally {
            workers.shutdownNow();
        }
    }

    /** Work that is begun and not handed on. */
    private interface Hand<R> {
        void begin(ExecutorService workers, Callable<R> task);

        /** Waits for one. */
        R take();

        int size();
    }

    /** The one that was begun first comes first. */
    private static final class Line<R> implements Hand<R> {
        private final Queue<Future<R>> begun = new ArrayDeque<>();

        @Override
        public void begin(ExecutorService workers, Callable<R> task) {
            begun.add(workers.submit(task));
        }

        @Override
        public R take() {
            return done(begun.remove());
        }

        @Override
        public int size() {
            return begun.size();
        }
    }

    /** The one that is ready first comes first. */
    private static final class Heap<R> implements Hand<R> {
        private final BlockingQueue<Future<R>> ready = new LinkedBlockingQueue<>();
        private int begun;

        @Override
        public void begin(ExecutorService workers, Callable<R> task) {
            begun++;
            workers.execute(new FutureTask<>(task) {
                @Override
                protected void done() {
                    ready.add(this);
                }
            });
        }

        @Override
        public R take() {
            try {
                begun--;
                return done(ready.take());
            } catch (InterruptedException nobodyDoes) {
                throw new IllegalStateException(nobodyDoes);
            }
        }

        @Override
        public int size() {
            return begun;
        }
    }

    private static <R> R done(Future<R> future) {
        try {
            return future.get();
        } catch (InterruptedException | ExecutionException nobodyDoes) {
            throw new IllegalStateException(nobodyDoes);
        }
    }
}
