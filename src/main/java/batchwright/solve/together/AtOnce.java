package batchwright.solve.together;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;

/**
 * Works on several items at once. What comes of them does not depend on how many threads there are.
 *
 * @param threads at least 1
 */
public record AtOnce(int threads) {
    /** The results in the order of the items. */
    <T, R> List<R> each(List<T> items, Function<T, R> work) {
        ExecutorService workers = Executors.newFixedThreadPool(threads, task -> {
            var thread = new Thread(task, "together");
            thread.setDaemon(true);
            return thread;
        });
        try {
            List<Callable<R>> tasks = new ArrayList<>();
            items.forEach(item -> tasks.add(() -> work.apply(item)));
            List<R> results = new ArrayList<>();
            for (Future<R> done : workers.invokeAll(tasks)) {
                results.add(done.get());
            }
            return results;
        } catch (ExecutionException | InterruptedException fault) {
            throw new IllegalStateException(fault);
        } finally {
            workers.shutdownNow();
        }
    }
}
