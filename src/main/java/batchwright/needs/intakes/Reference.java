package batchwright.needs.intakes;

import batchwright.food.Nutrient;
import java.util.Optional;

/** What is published for a nutrient, for one eater; both are empty when there is nothing to compare with. */
public record Reference(Nutrient nutrient, Optional<Recommended> recommended, Optional<Ceiling> limit) {}
