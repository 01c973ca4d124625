package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.person.Meals;
import batchwright.plan.Seat;
import batchwright.solve.mip.Expression;

/**
 * Breakfast dishes are for breakfasts: as many containers a day as the eater has breakfasts. One row for each eater: breakfast
 * containers over all days. Which day gets which is settled when days are laid out.
 */
public record MealsRule() implements Rule {
    @Override
    public void addTo(Draft draft) {
        for (Seat seat : draft.request().seats()) {
            Meals meals = seat.eater().wishes().meals();
            int days = draft.request().days();
            var breakfasts = new Expression();
            for (Dish dish : draft.menu().dishes(seat)) {
                if (dish.kind() == Dish.Kind.BREAKFAST) {
                    breakfasts.plus(draft.containers(seat, dish), 1);
                }
            }
            add(draft, "breakfasts." + seat.eater().id(), breakfasts, meals, days);
        }
    }

    /** So many breakfasts on so many days; no row where none is needed. */
    public static void add(Draft draft, String row, Expression breakfasts, Meals meals, int days) {
        double least = (double) meals.leastBreakfasts() * days;
        double most = (double) meals.mostBreakfasts() * days;
        if (least > 0 || breakfasts.most() > most) {
            draft.model().row(row, breakfasts, least, most);
        }
    }
}
