package batchwright.needs.intakes;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/** Which part of what is eaten a limit counts, and how much of that the catalogue can tell. */
public enum Counts {
    EVERYTHING,
    /** Nothing that is food. */
    SUPPLEMENTS,
    /** Folic acid put into food, not the folate that grew there. */
    FOLIC_ACID,
    /** Vitamin A as such, not the carotene of plants. The catalogue has only both together. */
    PREFORMED;

    /** DFE count folic acid 1.7 times and other folate once (IOM 1998, from memory): DFE - folate = 0.7 x folic acid. */
    private static final BigDecimal MORE_IN_DFE = new BigDecimal("0.7");

    /** What a day is known to hold of it, in the nutrient's unit; empty when the catalogue cannot tell. */
    public Optional<BigDecimal> of(Nutrients day, Nutrient nutrient) {
        return switch (this) {
            case EVERYTHING -> Optional.of(day.get(nutrient));
            case FOLIC_ACID -> folicAcid(day);
            case SUPPLEMENTS, PREFORMED -> Optional.empty();
        };
    }

    /** A food that has DFE but no folate would make it too high. */
    private static Optional<BigDecimal> folicAcid(Nutrients day) {
        return Optional.of(day)
                .filter(d -> d.isComplete(Nutrient.FOLATE))
                .map(d -> d.get(Nutrient.FOLATE_DFE).subtract(d.get(Nutrient.FOLATE)))
                .map(more -> more.max(BigDecimal.ZERO).divide(MORE_IN_DFE, MathContext.DECIMAL64));
    }
}
