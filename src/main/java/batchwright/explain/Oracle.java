package batchwright.explain;

import batchwright.plan.PlanRequest;
import batchwright.plan.Planner;
import batchwright.plan.Planner.Possible;
import batchwright.plan.Watch;
import java.time.Duration;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * Asks whether there is any plan, each time with little patience, until so much work is done that nothing more becomes known. Work
 * is what a planner tells its watch, so that the answers are the same on every machine; the clock only stops what takes far too
 * long.
 */
final class Oracle {
    /** A question that may do less work than this is not worth asking; one that is asked counts as at least so much. */
    private static final long LEAST_WORK = 1_000_000;

    /** A question that may take less time than this is not worth asking. */
    private static final long LEAST_NANOS = 10_000_000;

    private final Planner planner;
    private final Account account;
    private final long end;

    /**
     * How much may be done, as {@link Watch#stop(long)} counts it.
     *
     * @param oneQuestion most for one question
     * @param all most for all questions together
     */
    record WorkLimits(long oneQuestion, long all) {}

    /** What all shares of an oracle have done together. */
    private static final class Account {
        private final long oneQuestion;
        private final LongSupplier nanos;
        private final long deadline;
        private long done;
        private boolean timeEnded;

        Account(long oneQuestion, LongSupplier nanos, long deadline) {
            this.oneQuestion = oneQuestion;
            this.nanos = nanos;
            this.deadline = deadline;
        }

        long nanosLeft() {
            long left = deadline - nanos.getAsLong();
            timeEnded |= left < LEAST_NANOS;
            return left;
        }
    }

    /** Stops a question when it has done enough, be it in several searches one after another. */
    private static final class Allowance implements Watch {
        private final long most;
        private volatile long before;
        private volatile long ofThis;

        Allowance(long most) {
            this.most = most;
        }

        @Override
        public boolean stop() {
            return false;
        }

        @Override
        public boolean stop(long work) {
            if (work < ofThis) {
                before = done();
            }
            ofThis = work;
            return done() > most;
        }

        long done() {
            return before + ofThis;
        }
    }

    /**
     * @param nanos a clock [ns]
     * @param time most time for all questions together, from now
     */
    Oracle(Planner planner, WorkLimits limits, LongSupplier nanos, Duration time) {
        this(planner, new Account(limits.oneQuestion(), nanos, nanos.getAsLong() + time.toNanos()), limits.all());
    }

    private Oracle(Planner planner, Account account, long end) {
        this.planner = planner;
        this.account = account;
        this.end = end;
    }

    /** The same for one of so many equal shares of the work that is left. */
    Oracle shareOf(int shares) {
        return new Oracle(planner, account, account.done + left() / shares);
    }

    private long left() {
        return Math.max(0, end - account.done);
    }

    /** Whether something stays unknown because the time has ended, not because enough work was done. */
    boolean timeEnded() {
        return account.timeEnded;
    }

    Possible ask(PlanRequest request) {
        long work = Math.min(account.oneQuestion, left());
        long time = account.nanosLeft();
        if (work < LEAST_WORK || time < LEAST_NANOS) {
            return Possible.UNKNOWN;
        }
        var allowance = new Allowance(work);
        Possible answer = planner.possible(request.withPatience(Duration.ofNanos(time)), allowance);
        account.done += allowance.done() + LEAST_WORK;
        return answer;
    }

    /** What the cheapest plan costs, whatever the budget, as far as half of the work that is left allows. */
    KnownCost cost(PlanRequest request) {
        long work = left() / 2;
        long time = account.nanosLeft();
        if (work < LEAST_WORK || time < LEAST_NANOS) {
            return KnownCost.NOTHING;
        }
        PlanRequest asked = request.withBudget(Optional.empty()).withPatience(Duration.ofNanos(time));
        var allowance = new Allowance(work);
        KnownCost cost =
                CostOracle.answer(asked, planner.plan(asked, allowance)).cost();
        account.done += allowance.done() + LEAST_WORK;
        return cost;
    }
}
