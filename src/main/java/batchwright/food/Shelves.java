package batchwright.food;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Dishes by whom or what they are for, beside those of every day.
 *
 * @param dishes of each shelf, both in the order of the files; no dish stands on two shelves
 */
public record Shelves(Map<String, List<Dish>> dishes) {
    /** What the dishes beside the shelves are called where shelves are named. */
    public static final String EVERYDAY = "everyday";

    public static final Shelves NONE = new Shelves(Map.of());

    public Shelves {
        var ordered = new LinkedHashMap<String, List<Dish>>();
        dishes.forEach((shelf, on) -> ordered.put(shelf, List.copyOf(on)));
        dishes = Collections.unmodifiableMap(ordered);
    }

    public Set<String> names() {
        return dishes.keySet();
    }

    /** Empty for a shelf that there is not. */
    public List<Dish> on(String shelf) {
        return dishes.getOrDefault(shelf, List.of());
    }

    public List<Dish> all() {
        return dishes.values().stream().flatMap(List::stream).toList();
    }

    public Optional<Dish> dish(String id) {
        return all().stream().filter(dish -> dish.id().equals(id)).findFirst();
    }

    /** Where a dish stands; empty for one of every day. */
    public Optional<String> shelfOf(Dish dish) {
        return dishes.entrySet().stream()
                .filter(shelf -> shelf.getValue().contains(dish))
                .map(Map.Entry::getKey)
                .findFirst();
    }
}
