package batchwright.explain;

import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * A planner that is asked on a thread of its own, so that one that looks at the clock too seldom cannot hold up the answer. While
 * it is still busy with a question that was given up, nothing more is asked of it.
 */
final class Unwaiting implements Planner {
    /** So much longer than its patience a question may take [ms]. */
    private static final long GRACE_MILLIS = 1000;

    private final Planner planner;
    private Optional<FutureTask<Possible>> givenUp = Optional.empty();

    Unwaiting(Planner planner) {
        this.planner = planner;
    }

    @Override
    public PlanResult plan(PlanRequest request) {
        return planner.plan(request);
    }

    @Override
    public Possible possible(PlanRequest request) {
        if (givenUp.filter(task -> !task.isDone()).isPresent()) {
            return Possible.UNKNOWN;
        }
        var task = new FutureTask<>(() -> planner.possible(request));
        var thread = new Thread(task, "possible");
        thread.setDaemon(true);
        thread.start();
        try {
            return task.get(request.patience().toMillis() + GRACE_MILLIS, TimeUnit.MILLISECONDS);
        } catch (TimeoutException tooSlow) {
            givenUp = Optional.of(task);
            return Possible.UNKNOWN;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Possible.UNKNOWN;
        } catch (ExecutionException fault) {
            throw new IllegalStateException("planner failed", fault.getCause());
        }
    }
}
