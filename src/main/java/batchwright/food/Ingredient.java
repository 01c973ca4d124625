package batchwright.food;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * One food in a part's mix.
 *
 * @param amount raw edible grams as the recipe writes them; only the proportions inside the part count
 * @param cooked how it is cooked, if that changes its weight
 * @param measured the amount as the recipe writes it, when that is in household measures: 1 1/2 cups
 * @param instead what may take its place
 */
public record Ingredient(
        Food food, BigDecimal amount, Optional<CookedYield> cooked, Optional<String> measured, Instead instead) {
    /** Nothing may take its place. */
    public Ingredient(Food food, BigDecimal amount, Optional<CookedYield> cooked, Optional<String> measured) {
        this(food, amount, cooked, measured, Instead.NONE);
    }

    /** An amount that was written in grams. */
    public Ingredient(Food food, BigDecimal amount, Optional<CookedYield> cooked) {
        this(food, amount, cooked, Optional.empty());
    }

    /** Whether it can be had, or what may take its place. */
    public boolean isPossible(Predicate<Food> canGet) {
        return canGet.test(food)
                || instead.nothing()
                || instead.others().stream().map(Ingredient::food).anyMatch(canGet);
    }

    /** Cooked weight / raw weight; 1 when nothing is said. */
    public BigDecimal yieldFactor() {
        return cooked.map(CookedYield::factor).orElse(BigDecimal.ONE);
    }
}
