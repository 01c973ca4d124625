package batchwright.answer;

import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Part;
import batchwright.food.Staple;
import batchwright.plan.Batch;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The known allergens of a dish, and the staple that alone brings one. */
public final class DishAllergens {
    private DishAllergens() {}

    /** The same for a batch: an allergen found only in parts that nobody gets is marked so. The parts share a kitchen. */
    public static String text(Batch batch) {
        return text(batch.dish(), allergen -> leftOut(batch, allergen));
    }

    /** Of foods that are eaten as they are bought. */
    public static String named(Collection<Allergen> allergens) {
        return allergens.isEmpty()
                ? "none known"
                : allergens.stream().map(Allergen::label).collect(Collectors.joining(", "));
    }

    /** Two sentences: tree nut, wheat, mustard (mustard seeds). Labels decide: ... */
    public static String text(Dish dish) {
        return text(dish, allergen -> "");
    }

    private static String text(Dish dish, Function<Allergen, String> note) {
        List<String> known = dish.allergens().stream()
                .map(allergen -> named(dish, allergen) + note.apply(allergen))
                .toList();
        return (known.isEmpty() ? "none known" : String.join(", ", known)) + ". Labels decide: read them"
                + (dish.staples().isEmpty() ? "." : ", those of what is always at home too.");
    }

    private static String leftOut(Batch batch, Allergen allergen) {
        Dish dish = batch.dish();
        List<Part> carrying = dish.parts().stream()
                .filter(part ->
                        part.mix().stream().anyMatch(i -> i.food().allergens().contains(allergen)))
                .toList();
        boolean reachesNobody = !carrying.isEmpty()
                && dish.staples().stream()
                        .noneMatch(staple -> staple.allergens().contains(allergen))
                && batch.fills().stream()
                        .flatMap(fill -> fill.portions().stream())
                        .filter(portion -> carrying.contains(portion.part()))
                        .allMatch(portion -> portion.rawGrams() == 0);
        return reachesNobody
                ? " (" + carrying.stream().map(Part::name).collect(Collectors.joining(", "))
                        + ", left out of every container)"
                : "";
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
