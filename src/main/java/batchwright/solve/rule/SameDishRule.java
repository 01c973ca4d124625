package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.plan.Seat;
import batchwright.solve.mip.Expression;
import java.util.List;

/**
 * No eater gets more containers of one dish than they wish, over all days. Rows in containers. Containers from before and new ones of the
 * same dish are counted together.
 */
public record SameDishRule() implements Rule {
    @Override
    public void addTo(Draft draft) {
        for (Seat seat : draft.request().seats()) {
            draft.request()
                    .left()
                    .byOrigin(draft.menu().dishes(seat))
                    .forEach((origin, dishes) -> add(draft, seat, origin, dishes));
        }
    }

    private static void add(Draft draft, Seat seat, String origin, List<Dish> dishes) {
        int most =
                seat.eater().wishes().mostInAll(dishes.get(0), draft.request().days());
        int possible = 0;
        var count = new Expression();
        for (Dish dish : dishes) {
            possible += draft.mostContainers(seat, dish);
            count.plus(draft.containers(seat, dish), 1);
        }
        if (possible > most) {
            draft.model().atMost("same_dish." + origin + "." + seat.eater().id(), count, most);
        }
    }
}
