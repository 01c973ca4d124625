package batchwright.solve.snack;

import java.util.List;
import java.util.function.ToLongFunction;

/**
 * Counts an amount that must be covered in steps, everything rounded up: if some pieces cover the amount, then their
 * steps cover its steps. (The other way round holds only when the step divides every amount.)
 *
 * @param need the amount to be covered from nothing, at least 0
 * @param step size of a step, at least 1
 */
record Grid(long need, long step) {

    /** Nothing to cover. */
    static final Grid NONE = new Grid(0, 1);

    /** The finest grid of no more than so many steps that is of any use for these pieces. */
    static Grid of(ToLongFunction<Piece> amount, List<Piece> pieces, long need, int mostSteps) {
        long common = 0;
        for (Piece piece : pieces) {
            common = commonDivisor(common, amount.applyAsLong(piece));
        }
        return new Grid(need, Math.max(Math.max(1, common), roundUp(need, mostSteps)));
    }

    private static long commonDivisor(long a, long b) {
        return b == 0 ? a : commonDivisor(b, a % b);
    }

    /** Steps of an amount, cut off at the need. */
    int steps(long amount) {
        return amount <= 0 ? 0 : (int) roundUp(Math.min(amount, need), step);
    }

    private static long roundUp(long amount, long step) {
        return (amount + step - 1) / step;
    }
}
