package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.plan.Seat;
import batchwright.plan.Variety;
import batchwright.plan.left.LeftContainers;
import batchwright.solve.mip.Expression;
import java.util.Set;

/**
 * At most and at least so many dishes in the cooking session, few of those of last time; a dish that is cooked fills at least two
 * containers, and one that is asked for is cooked.
 */
public record DishCountRule() implements Rule {
    /** No number of dishes, where one that is asked for cannot be served to anybody. */
    private static final int IMPOSSIBLE = -1;

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
            containers.plus(draft.cooked(dish), -draft.request().leastContainers(dish));
            draft.model().atLeast("batch." + dish.id(), containers, 0);
        }
        Set<Dish> asked = draft.request().mustCook();
        asked.stream()
                .filter(draft.menu().dishes()::contains)
                .forEach(dish -> draft.model()
                        .atLeast("asked_for." + dish.id(), new Expression().plus(draft.cooked(dish), 1), 1));
        boolean offered = draft.menu().dishes().containsAll(asked);
        draft.model().atMost("dishes", cooked, offered ? draft.request().mostDishes() : IMPOSSIBLE);
        cookedAnew(draft);
        variety(draft, cooked);
    }

    /** Where containers from before are only offered, others may not be cooked in their place. */
    private static void cookedAnew(Draft draft) {
        LeftContainers left = draft.request().left();
        if (left.eaten().size() < left.dishes().size()) {
            var anew = new Expression();
            draft.menu().dishes().stream()
                    .filter(dish -> !left.has(dish))
                    .forEach(dish -> anew.plus(draft.cooked(dish), 1));
            draft.model().atMost("cooked_anew", anew, draft.request().mostCookedAnew());
        }
    }

    private static void variety(Draft draft, Expression cooked) {
        Variety variety = draft.request().variety();
        if (variety.leastDishes() > 1) {
            draft.model().atLeast("least_dishes", cooked, variety.leastDishes());
        }
        var again = new Expression();
        draft.menu().dishes().stream()
                .filter(variety.lastTime()::contains)
                .forEach(dish -> again.plus(draft.cooked(dish), 1));
        if (again.most() > Variety.MOST_AGAIN) {
            draft.model().atMost("last_time", again, Variety.MOST_AGAIN);
        }
    }
}
