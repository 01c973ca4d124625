package batchwright.needs.evidence;

import batchwright.quantity.Energy;
import java.util.List;

/**
 * Resting energy by one published equation.
 *
 * @param equation authors and year
 * @param perDay resting energy a day
 * @param errorKcal usual error for one person [kcal/d], plus or minus
 * @param used whether the total is built on this one
 * @param caveats why it may not fit this body; empty when it was made for such bodies
 */
public record Estimate(
        String equation, Energy perDay, double errorKcal, boolean used, Citation source, List<String> caveats) {}
