package batchwright.app;

import java.util.List;

/**
 * What may be cooked, and how often.
 *
 * @param onlyDishes short ids of the dishes that may be cooked; empty when any may
 * @param mostDishes most dishes in a cooking session, at least 1
 * @param sessions how many cooking sessions, 1 to the number of days
 * @param vary whether no dish is cooked in two sessions in a row
 * @param shopOnce whether everything is bought before the first session, not before each
 */
public record CookingWanted(List<String> onlyDishes, int mostDishes, int sessions, boolean vary, boolean shopOnce) {
    public CookingWanted {
        onlyDishes = List.copyOf(onlyDishes);
    }

    /** In one session. */
    public CookingWanted(List<String> onlyDishes, int mostDishes) {
        this(onlyDishes, mostDishes, 1, false, false);
    }
}
