package batchwright.app.book;

import batchwright.app.Refused;
import batchwright.book.Event;
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

/** The dish of a kept plan as the plan cooks it: with the foods that it swaps. */
record KeptDish(Kitchen kitchen) {
    /** @throws Refused when the dish is gone, or was written anew since so that the plan's foods are not its own */
    Dish of(KeptBatch batch) {
        Dish written = kitchen.dish(batch.dish())
                .orElseThrow(() -> Refused.because(
                        "there is no dish called \"%s\" any more".formatted(batch.dish()),
                        NearestName.of(batch.dish(), kitchen.dishIds())
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

    /** With the swaps of the plan; empty where the file does not allow them any more. */
    Optional<Dish> cooked(KeptBatch batch, Dish written) {
        if (batch.swaps().isEmpty()) {
            return Optional.of(written);
        }
        List<Swap> swaps =
                batch.swaps().stream().flatMap(swap -> known(swap).stream()).toList();
        return swaps.size() < batch.swaps().size()
                ? Optional.empty()
                : Variant.of(written, swaps).map(Variant::dish);
    }

    /** Empty when one of its foods is not known any more. */
    private Optional<Swap> known(KeptSwap swap) {
        Optional<Food> food = food(swap.food());
        return swap.by().isEmpty()
                ? food.map(written -> new Swap(written, Optional.empty()))
                : food.flatMap(written -> swap.by().flatMap(this::food).map(by -> new Swap(written, Optional.of(by))));
    }

    private Optional<Food> food(String id) {
        return Optional.ofNullable(kitchen.foods().get(id));
    }
}
