package batchwright.answer;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * How much salt goes into a whole batch.
 *
 * @param recipe what the recipe says [g]; empty when it says to taste
 * @param most that leaves nobody above the salt of a day [g]; 0 when the foods bring enough
 */
public record SaltOfBatch(Optional<BigDecimal> recipe, int most) {
    /** What to weigh [g]: no more than the recipe says, and no more than may be. */
    public BigDecimal grams() {
        BigDecimal allowed = BigDecimal.valueOf(most);
        return recipe.map(allowed::min).orElse(allowed);
    }

    /** Whether the recipe says more than may be. */
    boolean isLessThanRecipe() {
        return recipe.filter(grams -> grams.compareTo(BigDecimal.valueOf(most)) > 0)
                .isPresent();
    }
}
