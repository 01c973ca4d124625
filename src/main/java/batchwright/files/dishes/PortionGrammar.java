package batchwright.files.dishes;

import batchwright.files.value.Measured;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.food.Food;
import batchwright.food.Part;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The least and most of a part in a container: 60 g, a multiple of 5 g because kitchen scales are read to that; or 2 pieces,
 * when the part comes in whole pieces.
 */
public final class PortionGrammar {
    private static final int STEP = Part.SCALE_STEP_GRAMS;
    private static final NumberRange GRAMS = NumberRange.of("weight", "5", "1500", "g", "this goes into one container");
    private static final NumberRange PIECE =
            NumberRange.of("weight of a piece", "5", "500", "g", "this goes into one container");
    private static final NumberRange PIECES =
            NumberRange.of("number of pieces", "1", "50", "", "this goes into one container");

    private static final Pattern WEIGHT = Pattern.compile("[-+0-9.,eE]*\\s*g?");

    private final Optional<Integer> pieceGrams;
    private final Problems problems;

    private PortionGrammar(Optional<Integer> pieceGrams, Problems problems) {
        this.pieceGrams = pieceGrams;
        this.problems = problems;
    }

    public static PortionGrammar onTheScale(Problems problems) {
        return new PortionGrammar(Optional.empty(), problems);
    }

    /** @param piece such as 50 g */
    public static Optional<PortionGrammar> inPieces(Written piece, Problems problems) {
        return Measured.read(piece, List.of("g"), "the weight of one piece, such as 50 g", problems)
                .flatMap(m -> new Numbers(problems).whole(m.number(), PIECE))
                .map(grams -> new PortionGrammar(Optional.of(grams), problems));
    }

    /** @param piece such as 50 g, or one of the food's measures: 1 large */
    public static Optional<PortionGrammar> inPieces(
            Written piece, Food food, AmountGrammar amounts, Problems problems) {
        if (isWeight(piece)) {
            return inPieces(piece, problems);
        }
        return amounts.read(Optional.of(food), piece)
                .flatMap(amount -> wholeGrams(piece, amount.grams(), problems))
                .map(grams -> new PortionGrammar(Optional.of(grams), problems));
    }

    static boolean isWeight(Written piece) {
        return WEIGHT.matcher(piece.text()).matches();
    }

    private static Optional<Integer> wholeGrams(Written piece, BigDecimal grams, Problems problems) {
        BigDecimal weight = grams.stripTrailingZeros();
        if (weight.scale() <= 0 && PIECE.holds(weight)) {
            return Optional.of(weight.intValueExact());
        }
        problems.error(
                piece,
                "%s weighs %s g".formatted(piece.text(), weight.toPlainString()),
                "expected a piece of whole grams, %s g to %s g"
                        .formatted(PIECE.least().toPlainString(), PIECE.most().toPlainString()));
        return Optional.empty();
    }

    int stepGrams() {
        return pieceGrams.orElse(STEP);
    }

    boolean pieces() {
        return pieceGrams.isPresent();
    }

    /** Raw edible grams. */
    public Optional<Integer> read(Written written) {
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
