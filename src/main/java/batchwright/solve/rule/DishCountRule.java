package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.solve.mip.Expression;

/**
 * At most so many dishes in the cooking session, a dish that is cooked fills at least two containers, and one
 * that is asked for is cooked.
 */
public record DishCountRule() implements Rule {
    @Override
    public void addTo(Draft draft) {
        var cooked = new Expression();
        for (Dish dish : draft.menu().dishes()) {
            cooked.plus(draft.cooked(dish), 1);
            var containers = new Expression();
            for (Seat seat : draft.request().seats()) {
                if (draft.menu().dishes(seat).contains(dish)) {
                    Expression mine = draft.containers(seat, dish);
                    containers.plus(mine, 1);
                    draft.model()
                            .atMost(
                                    "only_if_cooked." + dish.id() + "."
                                            + seat.eater().id(),
                                    new Expression()
                                            .plus(mine, 1)
                                            .plus(draft.cooked(dish), -draft.mostContainers(seat, dish)),
                                    0);
                }
            }
            containers.plus(draft.cooked(dish), -PlanRequest.LEAST_CONTAINERS_OF_A_DISH);
            draft.model().atLeast("batch." + dish.id(), containers, 0);
        }
        draft.menu().dishes().stream()
                .filter(draft.request().mustCook()::contains)
                .forEach(dish -> draft.model()
                        .atLeast("asked_for." + dish.id(), new Expression().plus(draft.cooked(dish), 1), 1));
        draft.model().atMost("dishes", cooked, draft.request().mostDishes());
    }
}
