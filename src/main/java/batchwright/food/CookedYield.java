package batchwright.food;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * How the weight of a food changes in cooking.
 *
 * @param method one or two words: boiled, roasted
 * @param factor cooked weight / raw edible weight; published figures differ by about 10 %
 * @param flag how well founded: checked, derived, memory or common practice
 * @param gramsPerMl density in a box [g/ml]; empty when that is not known
 */
public record CookedYield(
        Food food, String method, BigDecimal factor, String flag, String source, Optional<BigDecimal> gramsPerMl) {
    /** One whose density in a box is not known. */
    public CookedYield(Food food, String method, BigDecimal factor, String flag, String source) {
        this(food, method, factor, flag, source, Optional.empty());
    }
}
