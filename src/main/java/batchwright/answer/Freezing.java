package batchwright.answer;

import batchwright.food.Dish;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Serving;
import batchwright.plan.Session;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Which containers of a dish go into the freezer on the cooking day, because they are eaten after its fridge days.
 *
 * @param byDay containers, by the day they are eaten
 * @param slow whether some of them thaw for two evenings
 */
public record Freezing(SortedMap<Integer, Integer> byDay, boolean slow) {
    public static Freezing of(Session session, Dish dish) {
        var byDay = new TreeMap<Integer, Integer>();
        for (EaterDays eater : session.eaters()) {
            for (Day day : eater.days()) {
                day.servings().stream()
                        .filter(s -> s.dish().equals(dish) && s.from() == Serving.Storage.FREEZER)
                        .forEach(s -> byDay.merge(day.day(), s.count(), Integer::sum));
            }
        }
        return new Freezing(byDay, Thawing.isSlow(session, dish));
    }

    public static boolean anyOf(Session session) {
        return session.batches().stream()
                .anyMatch(b -> !of(session, b.dish()).byDay.isEmpty());
    }

    /**
     * Empty when nothing is frozen.
     *
     * @param firstDay the day of the plan on which the session cooks
     */
    public String says(int firstDay) {
        if (byDay.isEmpty()) {
            return "";
        }
        int all = byDay.values().stream().mapToInt(Integer::intValue).sum();
        String days = byDay.entrySet().stream()
                .map(e -> (byDay.size() > 1 ? e.getValue() + " for day " : "for day ") + (e.getKey() + firstDay - 1))
                .collect(Collectors.joining(", "));
        return "freeze " + all + " of them on the cooking day, " + days
                + (slow ? ", and move those of about a litre to the fridge two evenings before" : "");
    }
}
