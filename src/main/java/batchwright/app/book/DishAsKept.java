package batchwright.app.book;

import batchwright.app.Refused;
import batchwright.book.KeptPlan.KeptBatch;
import batchwright.book.KeptPlan.KeptSwap;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Swap;
import batchwright.food.Variant;
import batchwright.text.NearestName;
import java.util.List;
import java.util.Optional;

/** A dish as a kept plan cooks it, with the foods that the plan swapped. */
final class DishAsKept {
    private DishAsKept() {}

    /**
     * As it is written where the recipe does not allow the swaps any more.
     *
     * @throws Refused when there is no such dish any more
     */
    static Dish of(Kitchen kitchen, KeptBatch batch) {
        Dish written = Optional.ofNullable(kitchen.dishes().get(batch.dish()))
                .orElseThrow(() -> Refused.because(
                        "there is no dish called \"%s\" any more".formatted(batch.dish()),
                        NearestName.of(batch.dish(), kitchen.dishes().keySet())
                                .map(near -> "It may have been renamed to " + near + ": give it its name back.")
                                .orElse("Give it its name back.")));
        List<Swap> swaps = batch.swaps().stream()
                .flatMap(swap -> swap(kitchen, swap).stream())
                .toList();
        return swaps.isEmpty() ? written : Variant.of(written, swaps).map(Variant::dish).orElse(written);
    }

    private static Optional<Swap> swap(Kitchen kitchen, KeptSwap kept) {
        Optional<Food> by = kept.by().map(kitchen.foods()::get);
        return Optional.ofNullable(kitchen.foods().get(kept.food()))
                .filter(food -> by.isPresent() || kept.by().isEmpty())
                .map(food -> new Swap(food, by));
    }
}
