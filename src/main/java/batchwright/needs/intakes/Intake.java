package batchwright.needs.intakes;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * How much of a nutrient a day holds, beside what is published.
 *
 * @param aDay the known amount, in the nutrient's unit
 * @param complete whether every food has a value; otherwise the day holds at least {@code aDay}
 * @param counted what the limit counts of it; empty when there is no limit, or the catalogue cannot tell
 */
public record Intake(
        Reference reference, BigDecimal aDay, boolean complete, Optional<BigDecimal> counted, Standing standing) {
    /** From here on a recommendation counts as reached: food tables and portions are not known to better than 10 %. */
    public static final int REACHED_PERCENT = 90;

    private static final BigDecimal PER_CENT = BigDecimal.valueOf(100);

    /** How an amount compares with what is published; for an incomplete one, as far as is known. */
    public enum Standing {
        /** Nothing known speaks against it. */
        WITHIN,
        /** Below {@link #REACHED_PERCENT} of what is recommended. */
        SHORT,
        /** The same, but some food has no value: it may be enough. */
        MAYBE_SHORT,
        /** Above a limit. */
        ABOVE,
        /** Above a limit that counts only part of it, and the catalogue cannot tell the part. */
        MAYBE_ABOVE,
        /** Nothing is published to compare it with. */
        NOT_COMPARED
    }

    public static List<Intake> of(List<Reference> references, Nutrients day) {
        return references.stream().map(reference -> of(reference, day)).toList();
    }

    private static Intake of(Reference reference, Nutrients day) {
        Nutrient nutrient = reference.nutrient();
        Optional<BigDecimal> counted =
                reference.limit().flatMap(limit -> limit.counts().of(day, nutrient));
        return new Intake(
                reference, day.get(nutrient), day.isComplete(nutrient), counted, standing(reference, day, counted));
    }

    private static Standing standing(Reference reference, Nutrients day, Optional<BigDecimal> counted) {
        Nutrient nutrient = reference.nutrient();
        BigDecimal aDay = day.get(nutrient);
        if (reference.recommended().isEmpty() && reference.limit().isEmpty()) {
            return Standing.NOT_COMPARED;
        }
        if (reference.limit().filter(limit -> isAbove(limit, counted)).isPresent()) {
            return Standing.ABOVE;
        }
        if (reference.limit().filter(limit -> mayBeAbove(limit, aDay)).isPresent()) {
            return Standing.MAYBE_ABOVE;
        }
        // Salt that a cook adds is not counted, so a low figure of sodium says nothing.
        if (nutrient != Nutrient.SODIUM
                && reference.recommended().filter(r -> isShort(r, aDay)).isPresent()) {
            return day.isComplete(nutrient) ? Standing.SHORT : Standing.MAYBE_SHORT;
        }
        return Standing.WITHIN;
    }

    private static boolean isAbove(Ceiling limit, Optional<BigDecimal> counted) {
        return counted.filter(amount -> amount.compareTo(limit.amount()) > 0).isPresent();
    }

    private static boolean mayBeAbove(Ceiling limit, BigDecimal aDay) {
        return limit.counts() == Counts.PREFORMED && aDay.compareTo(limit.amount()) > 0;
    }

    private static boolean isShort(Recommended recommended, BigDecimal aDay) {
        BigDecimal reached = recommended.amount().multiply(BigDecimal.valueOf(REACHED_PERCENT));
        return aDay.multiply(PER_CENT).compareTo(reached) < 0;
    }

    public Nutrient nutrient() {
        return reference.nutrient();
    }

    /** Of what is recommended, in whole per cent, the rest cut off: 89.9 is not yet 90. */
    public Optional<Integer> percent() {
        return reference
                .recommended()
                .map(recommended -> aDay.multiply(PER_CENT)
                        .divide(recommended.amount(), 0, RoundingMode.DOWN)
                        .intValueExact());
    }
}
