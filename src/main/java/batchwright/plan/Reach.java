package batchwright.plan;

import batchwright.food.Nutrient;
import batchwright.food.Part;
import java.math.BigDecimal;
import java.util.List;

/**
 * From how little to how much of a nutrient one container of a dish can hold, whatever is at home or costs: parts are
 * independent of each other, so the least and the most of each add up.
 *
 * @param least in the nutrient's unit
 * @param most in the nutrient's unit
 */
public record Reach(BigDecimal least, BigDecimal most) {
    public static Reach of(DishRequest request, Nutrient nutrient) {
        BigDecimal least = BigDecimal.ZERO;
        BigDecimal most = BigDecimal.ZERO;
        for (Part part : request.dish().parts()) {
            if (request.mayHold(part)) {
                List<BigDecimal> ends = List.of(
                        amount(part, request.mayLeaveOut(part) ? 0 : part.leastGrams(), nutrient),
                        amount(part, part.mostGrams(), nutrient));
                least = least.add(ends.get(0).min(ends.get(1)));
                most = most.add(ends.get(0).max(ends.get(1)));
            }
        }
        return new Reach(least, most);
    }

    private static BigDecimal amount(Part part, int rawGrams, Nutrient nutrient) {
        return new Portion(part, rawGrams).nutrients().get(nutrient);
    }
}
