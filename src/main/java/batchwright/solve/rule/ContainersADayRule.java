package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.plan.Seat;
import batchwright.solve.mip.Expression;

/** Every eater gets exactly the containers a day that they ask for. One row for each eater: containers over all days. */
public record ContainersADayRule() implements Rule {
    @Override
    public void addTo(Draft draft) {
        for (Seat seat : draft.request().seats()) {
            var sum = new Expression();
            for (Dish dish : draft.menu().dishes(seat)) {
                sum.plus(draft.containers(seat, dish), 1);
            }
            int wanted =
                    seat.eater().wishes().containersADay() * draft.request().days();
            draft.model().row("containers." + seat.eater().id(), sum, wanted, wanted);
        }
    }
}
