package batchwright.solve;

import batchwright.solve.mip.Completion;
import batchwright.solve.mip.StepBudget;

/**
 * The slices of a search that takes turns with others: each has twice as many steps as the one before, and then the others may
 * spend as much before the next.
 */
final class TimeSlices {
    private final StepBudget budget;
    private long steps;
    private long resumeAt;

    /**
     * @param budget what the search spends from
     * @param first steps of the first slice
     */
    TimeSlices(StepBudget budget, long first) {
        this.budget = budget;
        this.steps = first;
    }

    /** The next slice may be spent. */
    void begin() {
        budget.refill(steps);
        steps *= 2;
    }

    /**
     * The slice is over.
     *
     * @param clock relaxations that all searches together had solved when it began
     * @param used relaxations solved in it
     */
    void end(long clock, long used) {
        resumeAt = clock + 2 * used;
    }

    /** Nothing is left to search. */
    void finish() {
        resumeAt = Completion.NEVER;
    }

    /** The clock of all searches stands at 0 again: who is not finished need not wait. */
    void restartClock() {
        resumeAt = resumeAt == Completion.NEVER ? resumeAt : 0;
    }

    /** When the next slice should begin; {@link Completion#NEVER} once finished. */
    long resumeAt() {
        return resumeAt;
    }
}
