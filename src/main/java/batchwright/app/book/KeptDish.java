package batchwright.app.book;

import batchwright.app.Refused;
import batchwright.book.Event;
import batchwright.book.KeptPlan.KeptBatch;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Swap;
import batchwright.food.Variant;
import batchwright.text.NearestName;
import java.util.List;
import java.util.Optional;

/** The dish of a kept plan as the plan cooks it: with the foods that it swaps. */
record KeptDish(Kitchen kitchen) {
    /** @throws Refused when the dish is gone, or was written anew since so that the plan's foods are not its own */
    Dish of(KeptBatch batch) {
        Dish written = Optional.ofNullable(kitchen.dishes().get(batch.dish()))
                .orElseThrow(() -> Refused.because(
                        "there is no dish called \"%s\" any more".formatted(batch.dish()),
                        NearestName.of(batch.dish(), kitchen.dishes().keySet())
                                .map(near -> "It may have been renamed to " + near + ": give it its name back.")
                                .orElse("Give it its name back.")));
        return cooked(batch, written)
                .filter(dish -> dish.foods().stream()
                        .map(Food::id)
                        .toList()
                        .containsAll(batch.ingredients().stream()
                                .map(Event.Weight::food)
                                .toList()))
                .orElseThrow(() -> Refused.because(
                        "the plan cooks %s with foods that its file does not have any more".formatted(batch.dish()),
                        "Share the pot out by weight: each container its part of what was planned."));
    }

    private Optional<Dish> cooked(KeptBatch batch, Dish written) {
        List<Swap> swaps = batch.swaps().stream()
                .filter(swap -> kitchen.foods().containsKey(swap.food()))
                .map(swap ->
                        new Swap(kitchen.foods().get(swap.food()), swap.by().map(kitchen.foods()::get)))
                .toList();
        return batch.swaps().isEmpty()
                ? Optional.of(written)
                : Variant.of(written, swaps).map(Variant::dish);
    }
}
