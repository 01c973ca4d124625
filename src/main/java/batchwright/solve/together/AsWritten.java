package batchwright.solve.together;

import batchwright.food.Dish;
import batchwright.food.Ingredient;
import batchwright.food.Kitchen;
import batchwright.food.Part;
import batchwright.food.Variant;
import batchwright.plan.Batch;
import batchwright.plan.Fill;
import batchwright.plan.Portion;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Dishes without what may take a food's place: a batch that many eat of is cooked as its recipe is written. */
final class AsWritten {
    private AsWritten() {}

    static Kitchen of(Kitchen kitchen) {
        Map<String, Dish> dishes = new LinkedHashMap<>(kitchen.dishes());
        dishes.replaceAll((id, dish) -> Variant.count(dish) == 0 ? dish : of(dish));
        return kitchen.withDishes(dishes);
    }

    private static Dish of(Dish dish) {
        return new Dish(
                dish.id(),
                dish.name(),
                dish.kind(),
                dish.fridgeDays(),
                dish.freezes(),
                dish.reheat(),
                dish.parts().stream().map(AsWritten::of).toList(),
                dish.staples(),
                dish.steps());
    }

    private static Part of(Part part) {
        List<Ingredient> mix = part.mix().stream()
                .map(i -> new Ingredient(i.food(), i.amount(), i.cooked(), i.measured()))
                .toList();
        return new Part(
                part.name(),
                part.optional(),
                part.stepGrams(),
                part.pieces(),
                part.leastGrams(),
                part.mostGrams(),
                mix,
                part.fatPouredOff());
    }

    /** The same containers in the words of the files. */
    private static Fill in(Dish written, Fill fill) {
        List<Portion> portions = fill.portions().stream()
                .map(portion -> new Portion(written(written, portion.part()), portion.rawGrams()))
                .toList();
        return new Fill(fill.eater(), fill.containers(), portions);
    }

    /** A batch of one dish for all. */
    static Batch batch(Dish written, List<Fill> fills) {
        return new Batch(written, fills.stream().map(fill -> in(written, fill)).toList());
    }

    private static Part written(Dish dish, Part planned) {
        return dish.parts().stream()
                .filter(part -> part.name().equals(planned.name()))
                .findFirst()
                .orElse(planned);
    }
}
