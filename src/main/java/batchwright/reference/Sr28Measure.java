package batchwright.reference;

/**
 * A household measure of a food of USDA SR28, as written there.
 *
 * @param sequence the source's own number within the food
 * @param amount how many of the measure weigh {@code grams}
 */
public record Sr28Measure(String sequence, String amount, String description, String grams) {}
