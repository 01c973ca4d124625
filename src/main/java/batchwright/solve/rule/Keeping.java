package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.plan.Seat;
import batchwright.solve.mip.Expression;

/**
 * What does not freeze is eaten within its fridge days. Over totals: the containers of such dishes fit into the first days.
 * Which day gets which container is settled when days are laid out.
 */
public record Keeping() implements Rule {
    @Override
    public String name() {
        return "keeping";
    }

    @Override
    public void addTo(Draft draft) {
        for (Seat seat : draft.request().seats()) {
            int aDay = seat.eater().wishes().containersADay();
            for (int day = 1; day < draft.request().days(); day++) {
                var early = new Expression();
                for (Dish dish : draft.menu().dishes(seat)) {
                    if (!dish.keepsUntil(day + 1)) {
                        early.plus(draft.containers(seat, dish), 1);
                    }
                }
                draft.model().atMost("keeping.day" + day + "." + seat.eater().id(), early, (double) aDay * day);
            }
        }
    }
}
