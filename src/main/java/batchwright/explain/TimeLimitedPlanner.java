package batchwright.explain;

import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.plan.Watch;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * A planner that is asked on a thread of its own, so that one that looks at the clock too seldom cannot hold up the answer. While
 * it is still busy with a question that was given up, nothing more is asked of it.
 */
final class TimeLimitedPlanner implements Planner {
    /** So much longer than its patience a question may take [ms]. */
    private static final long GRACE_MILLIS = 1000;

    private final Planner planner;
    private Optional<FutureTask<?>> givenUp = Optional.empty();

    TimeLimitedPlanner(Planner planner) {
        this.planner = planner;
    }

    @Override
    public PlanResult plan(PlanRequest request) {
        return plan(request, Watch.NONE);
    }

    @Override
    public PlanResult plan(PlanRequest request, Watch watch) {
        return inTime(request, () -> planner.plan(request, watch))
                .orElseGet(() -> new PlanResult.GaveUp(Optional.empty(), Proof.NONE));
    }

    @Override
    public Possible possible(PlanRequest request) {
        return possible(request, Watch.NONE);
    }

    @Override
    public Possible possible(PlanRequest request, Watch watch) {
        return inTime(request, () -> planner.possible(request, watch)).orElse(Possible.UNKNOWN);
    }

    private <T> Optional<T> inTime(PlanRequest request, Callable<T> question) {
        if (givenUp.filter(task -> !task.isDone()).isPresent()) {
            return Optional.empty();
        }
        var task = new FutureTask<T>(question);
        var thread = new Thread(task, "clashes");
        thread.setDaemon(true);
        thread.start();
        try {
            return Optional.of(task.get(request.patience().toMillis() + GRACE_MILLIS, TimeUnit.MILLISECONDS));
        } catch (TimeoutException tooSlow) {
            givenUp = Optional.of(task);
            return Optional.empty();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        } catch (ExecutionException fault) {
            throw new IllegalStateException("planner failed", fault.getCause());
        }
    }
}
