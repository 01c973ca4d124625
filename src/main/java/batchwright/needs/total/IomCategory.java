package batchwright.needs.total;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * The four categories of activity of IOM 2005 by PAL, each from its least on: 1.0, 1.4, 1.6 and 1.9, up to 2.5.
 *
 * <p>Source: Institute of Medicine. Dietary Reference Intakes for Energy, Carbohydrate, Fiber, Fat, Fatty Acids, Cholesterol,
 * Protein, and Amino Acids. 2002/2005, chapter 5.
 */
enum IomCategory {
    SEDENTARY("sedentary", 1.0),
    LOW_ACTIVE("low active", 1.4),
    ACTIVE("active", 1.6),
    VERY_ACTIVE("very active", 1.9);

    private static final double MOST_PAL = 2.5; // not included

    private final String label;
    private final double leastPal;

    IomCategory(String label, double leastPal) {
        this.label = label;
        this.leastPal = leastPal;
    }

    /** Empty outside 1.0 to under 2.5. */
    static Optional<IomCategory> of(double pal) {
        return pal >= MOST_PAL
                ? Optional.empty()
                : Stream.of(values())
                        .filter(category -> pal >= category.leastPal)
                        .reduce((lower, higher) -> higher);
    }

    String label() {
        return label;
    }
}
