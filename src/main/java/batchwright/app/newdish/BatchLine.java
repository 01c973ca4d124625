package batchwright.app.newdish;

import batchwright.food.CookedYield;
import batchwright.food.Food;
import java.math.BigDecimal;
import java.util.Optional;

/** One line of what goes into a batch, as it was understood. */
public sealed interface BatchLine {
    /**
     * A food that is counted and bought.
     *
     * @param grams edible, in the whole batch
     * @param cooked how its weight changes; empty when it stays
     * @param cookedSaid whether the user said how it is cooked, or that it is not
     * @param part that the user put it into; empty when that is proposed
     */
    record Mixed(Food food, BigDecimal grams, Optional<CookedYield> cooked, boolean cookedSaid, Optional<String> part)
            implements BatchLine {
        Mixed cookedBy(Optional<CookedYield> how) {
            return new Mixed(food, grams, how, cookedSaid, part);
        }
    }

    /**
     * A spice or the like that is always at home.
     *
     * @param grams in the whole batch; empty when it goes in to taste
     */
    record Seasoning(String name, Optional<BigDecimal> grams) implements BatchLine {}

    /** Not understood. */
    record Wrong(String says) implements BatchLine {}
}
