package batchwright.app;

import java.util.List;

/**
 * Which dishes and foods a plan is asked to use, by their short names.
 *
 * @param only dishes that may be cooked; empty when any may
 * @param with dishes that must be cooked
 * @param without dishes, foods and groups such as pork that must not be used, this time
 * @param lastTime dishes that were cooked last time
 */
public record DishesWanted(List<String> only, List<String> with, List<String> without, List<String> lastTime) {
    public static final DishesWanted ANY = only(List.of());

    public DishesWanted {
        only = List.copyOf(only);
        with = List.copyOf(with);
        without = List.copyOf(without);
        lastTime = List.copyOf(lastTime);
    }

    public static DishesWanted only(List<String> dishes) {
        return new DishesWanted(dishes, List.of(), List.of(), List.of());
    }
}
