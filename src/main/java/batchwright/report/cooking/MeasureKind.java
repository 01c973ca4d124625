package batchwright.report.cooking;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * How a household measure is divided, and how many of it a cook likes to count. Amounts are in twelfths, which hold halves,
 * thirds and quarters alike.
 */
enum MeasureKind {
    /** Measuring cups come as 1/4, 1/3, 1/2 and whole. */
    CUP(List.of(3, 4, 6, 8, 9), 10, 12 * MeasureKind.ONE),
    /** From half a cup (8 spoons) on, a cook takes a cup. */
    TBSP(List.of(6), 5, 7 * MeasureKind.ONE),
    /** Three are a tablespoon. */
    TSP(List.of(3, 6, 9), 3, 5 * MeasureKind.ONE / 2),
    /** An egg, an onion, a slice, a can. */
    PIECE(List.of(6), 5, 12 * MeasureKind.ONE);

    static final int ONE = 12;

    @SuppressWarnings("ImmutableEnumChecker") // List.copyOf makes one that cannot be changed
    private final List<Integer> fractions;

    private final int wholeFrom;
    private final int handy;

    /**
     * @param fractions that can be measured, in twelfths
     * @param wholeFrom from so many on only whole ones are counted
     * @param handy up to so many twelfths are easily counted
     */
    MeasureKind(List<Integer> fractions, int wholeFrom, int handy) {
        this.fractions = List.copyOf(fractions);
        this.wholeFrom = wholeFrom;
        this.handy = handy;
    }

    /** By the name of the measure; "cup of shreds" is a cup. */
    static MeasureKind of(String measure) {
        return switch (measure.split(" ", 2)[0]) {
            case "cup" -> CUP;
            case "tbsp" -> TBSP;
            case "tsp" -> TSP;
            default -> PIECE;
        };
    }

    boolean isHandy(int twelfths) {
        return twelfths <= handy;
    }

    /** The nearest amount that can be measured, in twelfths; the smaller of two that are equally near. */
    int nearest(BigDecimal twelfths) {
        int whole = twelfths.intValue() / ONE;
        Stream<Integer> parts = whole < wholeFrom ? fractions.stream() : Stream.of();
        return Stream.of(Stream.of(0), parts, Stream.of(ONE))
                .flatMap(marks -> marks)
                .map(mark -> whole * ONE + mark)
                .min(Comparator.comparing(
                        mark -> twelfths.subtract(BigDecimal.valueOf(mark)).abs()))
                .orElseThrow();
    }
}
