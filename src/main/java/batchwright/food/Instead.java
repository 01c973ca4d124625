package batchwright.food;

import java.util.List;

/**
 * What may take the place of an ingredient.
 *
 * @param others other foods, as many grams of them, cooked in the same way
 * @param nothing whether it may be left out
 */
public record Instead(List<Ingredient> others, boolean nothing) {
    /** The recipe is cooked as it is written. */
    public static final Instead NONE = new Instead(List.of(), false);

    public Instead {
        others = List.copyOf(others);
    }
}
