package batchwright.plan;

import batchwright.food.Dish;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * How different the dishes of a cooking session are.
 *
 * @param leastDishes at least so many are cooked
 * @param lastTime dishes that were cooked the time before; at most {@link #MOST_AGAIN} of them is cooked again
 */
public record Variety(int leastDishes, Set<Dish> lastTime) {
    /** Of last time's dishes. Our choice: a favourite may stay, a whole week may not come again. */
    public static final int MOST_AGAIN = 1;

    public static final Variety ANY = new Variety(1, Set.of());

    public Variety {
        lastTime = Collections.unmodifiableSet(new LinkedHashSet<>(lastTime));
    }

    public Variety withLeastDishes(int other) {
        return new Variety(other, lastTime);
    }

    public Variety withLastTime(Set<Dish> other) {
        return new Variety(leastDishes, other);
    }
}
