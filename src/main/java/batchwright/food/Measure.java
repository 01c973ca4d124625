package batchwright.food;

import java.math.BigDecimal;

/**
 * A household measure of a food, such as 1 medium banana.
 *
 * @param name singular: medium, cup, tbsp, slice
 * @param grams edible grams of one
 * @param snackMost most of them in one day as a snack; 0 when it is not offered as a snack
 * @param source where the grams come from
 */
public record Measure(Food food, String name, BigDecimal grams, int snackMost, String source) {}
