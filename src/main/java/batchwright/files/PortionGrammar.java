package batchwright.files;

import batchwright.food.Part;
import batchwright.text.Written;
import java.util.List;
import java.util.Optional;

/**
 * The least and most of a part in a container: 60 g, a multiple of 5 g because kitchen scales are read to that; or 2 pieces,
 * when the part comes in whole pieces.
 */
final class PortionGrammar {
    private static final int STEP = Part.SCALE_STEP_GRAMS;
    private static final Range GRAMS = Range.of("weight", "5", "1500", "g", "this goes into one container");
    private static final Range PIECE = Range.of("weight of a piece", "5", "500", "g", "this goes into one container");
    private static final Range PIECES = Range.of("number of pieces", "1", "50", "", "this goes into one container");

    private final Optional<Integer> pieceGrams;
    private final Problems problems;

    private PortionGrammar(Optional<Integer> pieceGrams, Problems problems) {
        this.pieceGrams = pieceGrams;
        this.problems = problems;
    }

    static PortionGrammar onTheScale(Problems problems) {
        return new PortionGrammar(Optional.empty(), problems);
    }

    /** @param piece such as 50 g */
    static Optional<PortionGrammar> inPieces(Written piece, Problems problems) {
        return Measured.read(piece, List.of("g"), "the weight of one piece, such as 50 g", problems)
                .flatMap(m -> new Numbers(problems).whole(m.number(), PIECE))
                .map(grams -> new PortionGrammar(Optional.of(grams), problems));
    }

    int stepGrams() {
        return pieceGrams.orElse(STEP);
    }

    boolean pieces() {
        return pieceGrams.isPresent();
    }

    /** Raw edible grams. */
    Optional<Integer> read(Written written) {
        return pieceGrams.isPresent() ? wholePieces(written, pieceGrams.get()) : weighed(written);
    }

    private Optional<Integer> wholePieces(Written written, int grams) {
        String example = "whole pieces of %s g, such as 1 piece or 2 pieces".formatted(grams);
        return Measured.read(written, List.of("piece", "pieces"), example, problems)
                .flatMap(m -> new Numbers(problems).whole(m.number(), PIECES))
                .map(count -> count * grams);
    }

    private Optional<Integer> weighed(Written written) {
        Optional<Integer> grams = Measured.read(
                        written, List.of("g"), "a weight such as 60 g (pieces need the line piece: 50 g)", problems)
                .flatMap(m -> new Numbers(problems).whole(m.number(), GRAMS));
        if (grams.isPresent() && grams.get() % STEP != 0) {
            int below = grams.get() / STEP * STEP;
            problems.error(
                    written,
                    "%s g is not a multiple of %s g, as kitchen scales are read".formatted(grams.get(), STEP),
                    "expected %s g or %s g".formatted(below, below + STEP));
            return Optional.empty();
        }
        return grams;
    }
}
