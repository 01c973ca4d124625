package batchwright.app;

import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Shelves;
import batchwright.text.NearestName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

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

    private static final String ALL = "all";

    public DishesWanted {
        only = List.copyOf(only);
        with = List.copyOf(with);
        without = List.copyOf(without);
        lastTime = List.copyOf(lastTime);
    }

    /**
     * The same among the dishes of these shelves too, as far as this kitchen can cook them.
     *
     * @param shelves by name; everyday is one, and all are all
     * @throws Refused when there is no such shelf, or nothing on them that can be cooked here
     */
    public DishesWanted andShelves(Kitchen kitchen, List<String> shelves) {
        Set<String> ids = new LinkedHashSet<>(only);
        for (String shelf : shelves.contains(ALL) ? names(kitchen) : shelves) {
            on(shelf, kitchen).stream()
                    .filter(dish -> kitchen.equipment().obstacle(dish).isEmpty())
                    .forEach(dish -> ids.add(dish.id()));
        }
        if (ids.isEmpty()) {
            throw Refused.because(
                    "nothing on the shelves " + String.join(", ", shelves) + " can be cooked in this kitchen",
                    "Name more shelves, or enter what there is in foods/kitchen.yaml.");
        }
        return new DishesWanted(List.copyOf(ids), with, without, lastTime);
    }

    private static Collection<Dish> on(String shelf, Kitchen kitchen) {
        if (!names(kitchen).contains(shelf)) {
            throw Refused.because(
                    "there is no shelf called \"" + shelf + "\" in foods/dishes/",
                    NearestName.of(shelf, names(kitchen))
                            .map(name -> "Nearest: " + name + ".")
                            .orElse("There are: " + String.join(", ", names(kitchen)) + ", all."));
        }
        return shelf.equals(Shelves.EVERYDAY)
                ? kitchen.dishes().values()
                : kitchen.shelves().on(shelf);
    }

    private static List<String> names(Kitchen kitchen) {
        List<String> names = new ArrayList<>(List.of(Shelves.EVERYDAY));
        names.addAll(kitchen.shelves().names());
        return names;
    }

    public static DishesWanted only(List<String> dishes) {
        return new DishesWanted(dishes, List.of(), List.of(), List.of());
    }
}
