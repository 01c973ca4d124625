package batchwright.solve.mip;

/** So many steps that may be spent. Only spending changes what is left; asking does not. */
public final class StepBudget {
    private long left;

    /** @param steps at least 0 */
    public StepBudget(long steps) {
        refill(steps);
    }

    public static StepBudget unlimited() {
        return new StepBudget(Long.MAX_VALUE);
    }

    /** So many steps from now on, whatever was left before. */
    public void refill(long steps) {
        left = steps;
    }

    public void spend() {
        left--;
    }

    public boolean isSpent() {
        return left <= 0;
    }
}
