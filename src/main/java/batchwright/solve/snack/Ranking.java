package batchwright.solve.snack;

import java.util.List;
import java.util.function.ToLongFunction;

/**
 * The order of answers under one reading of "smallest", as one number per piece: the numbers of all pieces of a snack
 * add up to its rank, and a lower rank is a smaller snack.
 *
 * <p>The figures to compare (say energy, pieces, cost, pieces at home counted down) are the digits of the rank; each
 * digit's base is one more than its total over all pieces, so a lower digit can never carry into a higher one and
 * comparing ranks compares figure by figure. Figures that no longer fit into 60 bits are left out of the rank and
 * compared by {@link #compareLeftOut}.
 */
final class Ranking {
    /** Above every rank. */
    static final long WORST = 1L << 60;

    private final List<ToLongFunction<Piece>> figures;
    private final long[] base;
    private final int ranked;

    Ranking(Smallest smallest, List<Piece> pieces) {
        figures = figures(smallest);
        base = new long[figures.size()];
        long values = 1;
        int fit = 0;
        for (int i = 0; i < base.length; i++) {
            base[i] = 1 + totalSize(figures.get(i), pieces);
            if (fit == i && values <= WORST / base[i]) {
                values *= base[i];
                fit++;
            }
        }
        ranked = fit;
    }

    private static List<ToLongFunction<Piece>> figures(Smallest smallest) {
        ToLongFunction<Piece> one = piece -> 1;
        ToLongFunction<Piece> bought = piece -> piece.atHome() ? -1 : 0;
        return switch (smallest) {
            case ENERGY -> List.of(Piece::energy, one, Piece::cost, bought);
            case PIECES -> List.of(one, Piece::energy, Piece::cost, bought);
            case COST -> List.of(Piece::cost, Piece::energy, one, bought);
            case GRAMS -> List.of(Piece::grams, Piece::energy, Piece::cost, bought);
        };
    }

    private static long totalSize(ToLongFunction<Piece> figure, List<Piece> pieces) {
        return pieces.stream()
                .mapToLong(piece -> Math.abs(figure.applyAsLong(piece)) * piece.most())
                .sum();
    }

    /** What one piece adds to the rank of a snack. */
    long rank(Piece piece) {
        long rank = 0;
        for (int i = 0; i < ranked; i++) {
            rank = rank * base[i] + figures.get(i).applyAsLong(piece);
        }
        return rank;
    }

    /** Whether equal ranks mean that all figures are equal. */
    boolean complete() {
        return ranked == base.length;
    }

    /** Compares two snacks of equal rank by the figures that did not fit into it. */
    int compareLeftOut(Choice one, Choice other) {
        for (int i = ranked; i < base.length; i++) {
            int order = Long.compare(one.total(figures.get(i)), other.total(figures.get(i)));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }
}
