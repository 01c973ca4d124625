package batchwright.audit;

import batchwright.food.Dish;
import batchwright.person.Meals;
import batchwright.person.TimesADay;
import batchwright.plan.Day;
import batchwright.plan.Seat;
import batchwright.plan.Serving;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;

/** The dishes of each day can be dealt out to the eater's breakfasts, lunches and dinners, and no dish comes more often in all than it may. */
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
                    inAll.merge(evidence.request().left().origin(serving.dish().id()), serving.count(), Integer::sum);
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
        Map<Dish.Kind, Integer> served = new EnumMap<>(Dish.Kind.class);
        for (Serving serving : day.servings()) {
            evidence.known()
                    .dish(serving.dish())
                    .ifPresent(dish -> served.merge(dish.kind(), serving.count(), Integer::sum));
        }
        int breakfasts = served.getOrDefault(Dish.Kind.BREAKFAST, 0);
        int lunches = served.getOrDefault(Dish.Kind.LUNCH, 0);
        int dinners = served.getOrDefault(Dish.Kind.DINNER, 0);
        int either = served.getOrDefault(Dish.Kind.MAIN, 0);
        Meals meals = seat.eater().wishes().meals();
        if (!isRight(breakfasts, meals.breakfasts(), meals.mostBreakfasts())) {
            findings.add(Say.day(seat, day) + ": " + breakfasts + " breakfast dishes, from "
                    + meals.breakfasts().least() + " to " + meals.mostBreakfasts() + " were asked for");
        }
        int containers = seat.eater().wishes().containersADay();
        boolean dealt = false;
        for (int toLunch = 0; toLunch <= either; toLunch++) {
            dealt |= isRight(lunches + toLunch, meals.lunches(), meals.mostLunches(containers))
                    && isRight(dinners + either - toLunch, meals.dinners(), meals.mostDinners(containers));
        }
        if (!dealt) {
            findings.add(
                    Say.day(seat, day) + ": " + lunches + " lunch dishes, " + dinners + " dinner dishes and " + either
                            + " for either, from " + meals.lunches().least() + " to " + meals.mostLunches(containers)
                            + " lunches and from " + meals.dinners().least() + " to " + meals.mostDinners(containers)
                            + " dinners were asked for");
        }
    }

    private static boolean isRight(int count, TimesADay asked, int most) {
        return asked.least() <= count && count <= most;
    }
}
