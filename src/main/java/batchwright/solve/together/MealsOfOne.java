package batchwright.solve.together;

import batchwright.food.Dish;
import batchwright.plan.Batch;
import batchwright.plan.EaterDays;
import batchwright.plan.Seat;
import batchwright.plan.Session;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What one eater eats: containers filled for them alone, and snacks.
 *
 * @param batches only their own containers
 * @param cost by worth, in tenths of the minor unit
 */
record MealsOfOne(EaterDays days, List<Batch> batches, long cost) {
    /** Few for one person: the more, the longer the search. */
    static final int MOST_DISHES = 3;

    MealsOfOne {
        batches = List.copyOf(batches);
    }

    /** Of a plan for one. */
    static MealsOfOne of(Session session) {
        return new MealsOfOne(
                session.eaters().get(0), session.batches(), session.cost().minor());
    }

    Seat seat() {
        return days.seat();
    }

    Set<Dish> dishes() {
        return batches.stream().map(Batch::dish).collect(Collectors.toSet());
    }

    int containersOf(Dish dish) {
        return batches.stream()
                .filter(batch -> batch.dish().equals(dish))
                .mapToInt(Batch::containers)
                .sum();
    }
}
