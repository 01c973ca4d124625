package batchwright.audit;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import java.math.BigDecimal;

/** Stated nutrients beside recomputed ones. */
final class Stated {
    private Stated() {}

    static void compare(String where, Nutrients stated, Grams recomputed, Findings findings) {
        for (Nutrient nutrient : Nutrient.ofFoods()) {
            BigDecimal found = recomputed.holds(nutrient);
            if (!Tolerance.same(stated.get(nutrient), found)) {
                findings.add(where + ": " + nutrient.label() + " stated "
                        + Say.against(stated.get(nutrient), "recomputed", found, nutrient.unit()));
            }
            if (stated.isComplete(nutrient) && !recomputed.knows(nutrient)) {
                findings.add(where + ": " + nutrient.label() + " is stated as complete, but a food has no value");
            }
        }
    }
}
