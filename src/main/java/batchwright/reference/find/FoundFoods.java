package batchwright.reference.find;

import batchwright.food.Food;
import batchwright.reference.Sr28Food;
import java.util.List;

/**
 * Foods that were found.
 *
 * @param yours foods of the catalogue, best first
 * @param reference foods of USDA SR28, best first
 * @param yoursFirst whether the best of all is one of the catalogue
 * @param match how well they fit what was typed
 * @param readAs what was typed, with slips mended
 */
public record FoundFoods(List<Food> yours, List<Sr28Food> reference, boolean yoursFirst, Match match, String readAs) {

    /** How well foods fit. */
    public enum Match {
        /** They have all words, or other names of the same food. */
        ALL,
        /** No table has the food; these are the nearest. */
        NEAREST,
        /** No food has all words; these have the most of them. */
        SOME
    }

    /** Whether there is nothing. */
    public boolean isEmpty() {
        return yours.isEmpty() && reference.isEmpty();
    }
}
