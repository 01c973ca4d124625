package batchwright.food;

import java.math.BigDecimal;

/**
 * How the weight of a food changes in cooking.
 *
 * @param method one or two words: boiled, roasted
 * @param factor cooked weight / raw edible weight; published figures differ by about 10 %
 * @param flag how well founded: checked, derived, memory or common practice
 */
public record CookedYield(Food food, String method, BigDecimal factor, String flag, String source) {}
