package batchwright.answer.roster;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * The last weighing in the book.
 *
 * @param before what the profile says [kg]
 */
public record LastWeighed(LocalDate day, BigDecimal kg, BigDecimal before) {}
