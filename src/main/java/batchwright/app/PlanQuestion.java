package batchwright.app;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * What a plan is asked for, as the user says it.
 *
 * @param eaters paths or short ids of profiles, at least one
 * @param days 1 to 28
 * @param budget most to spend
 * @param dishes which may, must and must not be cooked
 * @param mostDishes most dishes in the cooking session, at least 1
 * @param patience how long to search
 * @param insight what to find out beside
 */
public record PlanQuestion(
        List<String> eaters,
        int days,
        Optional<TypedSum> budget,
        DishesWanted dishes,
        int mostDishes,
        Duration patience,
        InsightWanted insight) {
    public PlanQuestion {
        eaters = List.copyOf(eaters);
    }
}
