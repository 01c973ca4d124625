package batchwright.audit;

import batchwright.food.Dish;
import batchwright.person.Meals;
import batchwright.plan.Day;
import batchwright.plan.Seat;
import batchwright.plan.Serving;
import java.util.LinkedHashMap;
import java.util.Map;

/** Each day has as many breakfast dishes as the eater has breakfasts, and no dish comes more often in all than it may. */
record MealsKept() implements Inspection {
    @Override
    public String name() {
        return "meals";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        evidence.days((seat, day) -> inspectDay(evidence, seat, day, findings));
        for (Seat seat : evidence.request().seats()) {
            Map<String, Integer> inAll = new LinkedHashMap<>();
            for (Day day : evidence.days(seat)) {
                for (Serving serving : day.servings()) {
                    inAll.merge(serving.dish().id(), serving.count(), Integer::sum);
                }
            }
            int most = seat.eater().wishes().meals().sameDishInAll().orElse(Integer.MAX_VALUE);
            inAll.forEach((dish, count) -> {
                if (count > most) {
                    findings.add(
                            seat.eater().name() + ": " + count + " containers of " + dish + " in all, at most " + most);
                }
            });
        }
    }

    private static void inspectDay(Evidence evidence, Seat seat, Day day, Findings findings) {
        int breakfasts = 0;
        for (Serving serving : day.servings()) {
            boolean breakfast = evidence.known()
                    .dish(serving.dish())
                    .filter(dish -> dish.kind() == Dish.Kind.BREAKFAST)
                    .isPresent();
            breakfasts += breakfast ? serving.count() : 0;
        }
        Meals meals = seat.eater().wishes().meals();
        if (breakfasts < meals.leastBreakfasts() || breakfasts > meals.mostBreakfasts()) {
            findings.add(Say.day(seat, day) + ": " + breakfasts + " breakfast dishes, from " + meals.leastBreakfasts()
                    + " to " + meals.mostBreakfasts() + " were asked for");
        }
    }
}
