package batchwright.person;

import batchwright.food.Dish;
import java.util.List;
import java.util.Set;

/**
 * How many containers a day are of dishes of some kinds.
 *
 * @param name of the meals that it is about, short and without spaces
 * @param most at least as many as least
 */
public record KindsADay(String name, Set<Dish.Kind> kinds, int least, int most) {
    public boolean counts(Dish dish) {
        return kinds.contains(dish.kind());
    }

    /** Whether a day with so many containers of these dishes is right. */
    public static boolean allHold(List<KindsADay> all, List<Dish> dishes, int[] containers) {
        for (KindsADay each : all) {
            int count = 0;
            for (int d = 0; d < containers.length; d++) {
                count += each.counts(dishes.get(d)) ? containers[d] : 0;
            }
            if (count < each.least() || count > each.most()) {
                return false;
            }
        }
        return true;
    }
}
