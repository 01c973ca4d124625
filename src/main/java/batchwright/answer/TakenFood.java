package batchwright.answer;

import batchwright.food.Food;
import batchwright.reference.take.Proposal;
import java.util.List;
import java.util.Optional;

/**
 * A food of USDA SR28 ready to be pasted.
 *
 * @param line for foods/catalogue.csv
 * @param measures lines for foods/measures.csv
 * @param yours the food of the catalogue that has this number already
 */
public record TakenFood(Proposal proposal, String line, List<String> measures, Optional<Food> yours) {}
