package batchwright.reference.take;

import batchwright.food.Allergen;
import batchwright.food.origin.Origins;
import java.util.Set;

/** What the name of a food lets one guess of what is in it. */
record ProposedContents(Set<Allergen> allergens, Origins origins) {}
