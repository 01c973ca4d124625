package batchwright.solve.snack;

import java.util.List;
import java.util.function.ToLongFunction;

/** A snack in whole numbers: {@code counts[i]} pieces of {@code pieces.get(i)}. */
record Choice(List<Piece> pieces, int[] counts) {

    long energy() {
        return total(Piece::energy);
    }

    long protein() {
        return total(Piece::protein);
    }

    long total(ToLongFunction<Piece> figure) {
        long total = 0;
        for (int i = 0; i < counts.length; i++) {
            total += counts[i] * figure.applyAsLong(pieces.get(i));
        }
        return total;
    }
}
