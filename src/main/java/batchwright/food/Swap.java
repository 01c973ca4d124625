package batchwright.food;

import java.util.Optional;

/**
 * A food of a dish in the place of another.
 *
 * @param food as the recipe is written
 * @param by what is used; empty when it is left out
 */
public record Swap(Food food, Optional<Food> by) {}
