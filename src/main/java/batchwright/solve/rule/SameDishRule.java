package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.plan.Seat;
import batchwright.solve.mip.Expression;
import java.util.OptionalInt;

/** No eater gets more containers of one dish than they wish, over all days. Rows in containers. */
public record SameDishRule() implements Rule {
    @Override
    public void addTo(Draft draft) {
        for (Seat seat : draft.request().seats()) {
            OptionalInt most = seat.eater().wishes().meals().sameDishInAll();
            for (Dish dish : draft.menu().dishes(seat)) {
                if (most.isPresent() && draft.mostContainers(seat, dish) > most.getAsInt()) {
                    draft.model()
                            .atMost(
                                    "same_dish." + dish.id() + "."
                                            + seat.eater().id(),
                                    new Expression().plus(draft.containers(seat, dish), 1),
                                    most.getAsInt());
                }
            }
        }
    }
}
