package batchwright.app;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * What a plan is asked for, as the user says it.
 *
 * @param eaters paths or short ids of profiles, at least one
 * @param days 1 to 28
 * @param budget most to spend
 * @param shops that are gone to, by their names; none for all of them
 * @param howLong to search
 * @param insight what to find out beside
 */
public record PlanQuestion(
        List<String> eaters,
        int days,
        Optional<TypedSum> budget,
        CookingWanted cooking,
        List<String> shops,
        HowLong howLong,
        InsightWanted insight) {
    public PlanQuestion {
        eaters = List.copyOf(eaters);
        shops = List.copyOf(shops);
    }

    /** The same for fewer days, in no more cooking sessions than days. */
    public PlanQuestion withDays(int other) {
        return new PlanQuestion(eaters, other, budget, cooking.forDays(other), shops, howLong, insight);
    }

    public PlanQuestion withBudget(Optional<TypedSum> other) {
        return new PlanQuestion(eaters, days, other, cooking, shops, howLong, insight);
    }

    public PlanQuestion withInsight(InsightWanted other) {
        return new PlanQuestion(eaters, days, budget, cooking, shops, howLong, other);
    }

    public PlanQuestion withDishes(DishesWanted other) {
        return new PlanQuestion(eaters, days, budget, cooking.withDishes(other), shops, howLong, insight);
    }

    /**
     * How long to search for a plan.
     *
     * @param patience at most
     * @param within and only until the plan is proven to cost at most so many per cent more than any other
     */
    public record HowLong(Duration patience, Optional<BigDecimal> within) {
        /** To the proof, if there is time. */
        public HowLong(Duration patience) {
            this(patience, Optional.empty());
        }
    }
}
