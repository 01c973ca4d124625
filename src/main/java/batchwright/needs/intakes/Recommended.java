package batchwright.needs.intakes;

import batchwright.needs.evidence.Citation;
import java.math.BigDecimal;

/**
 * At least this much a day.
 *
 * @param amount in the nutrient's unit, above 0
 */
public record Recommended(Kind kind, BigDecimal amount, Citation source) {}
