package batchwright.needs.intakes;

import batchwright.needs.evidence.Citation;
import java.math.BigDecimal;

/**
 * At most this much a day.
 *
 * @param amount in the nutrient's unit
 * @param counts which part of what is eaten it limits
 */
public record Ceiling(Kind kind, BigDecimal amount, Counts counts, Citation source) {}
