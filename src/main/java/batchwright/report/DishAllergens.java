package batchwright.report;

import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Staple;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The known allergens of a dish, and where a staple alone brings one, which. */
final class DishAllergens {
    private DishAllergens() {}

    /** Two sentences: tree nut, wheat, mustard (mustard seeds). Labels decide: ... */
    static String text(Dish dish) {
        List<String> known =
                dish.allergens().stream().map(allergen -> named(dish, allergen)).toList();
        return (known.isEmpty() ? "none known" : String.join(", ", known)) + ". Labels decide: read them"
                + (dish.staples().isEmpty() ? "." : ", those of what is always at home too.");
    }

    private static String named(Dish dish, Allergen allergen) {
        if (dish.foods().stream().anyMatch(food -> food.allergens().contains(allergen))) {
            return allergen.label();
        }
        List<String> staples = new ArrayList<>();
        dish.staples().stream()
                .filter(staple -> staple.allergens().contains(allergen))
                .map(Staple::name)
                .forEach(staples::add);
        return allergen.label() + staples.stream().collect(Collectors.joining(", ", " (", ")"));
    }
}
