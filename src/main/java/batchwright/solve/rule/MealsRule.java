package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.person.KindsADay;
import batchwright.plan.Seat;
import batchwright.solve.mip.Expression;
import java.util.function.Function;

/**
 * Dishes are for the meals that their kind says: as many containers a day as the eater has breakfasts, lunches and dinners. A row
 * for each eater and meal: containers over all days. Which day gets which is settled when days are laid out.
 */
public record MealsRule() implements Rule {
    @Override
    public void addTo(Draft draft) {
        for (Seat seat : draft.request().seats()) {
            add(draft, seat, seat.eater().id(), draft.request().days(), dish -> draft.containers(seat, dish));
        }
    }

    /**
     * Rows for so many days; none where none is needed.
     *
     * @param name of eater, and day if it is one, for the names of rows
     */
    public static void add(Draft draft, Seat seat, String name, int days, Function<Dish, Expression> containers) {
        int all = seat.eater().wishes().containersADay();
        for (KindsADay kinds : seat.eater().wishes().kindsADay()) {
            var count = new Expression();
            draft.menu().dishes(seat).stream()
                    .filter(kinds::counts)
                    .forEach(dish -> count.plus(containers.apply(dish), 1));
            int least = kinds.least() * days;
            int most = kinds.most() * days;
            if (least > 0 || (kinds.most() < all && count.most() > most)) {
                draft.model().row(kinds.name() + "." + name, count, least, most);
            }
        }
    }
}
