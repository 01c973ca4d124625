package batchwright.solve.snack;

import java.util.List;

/**
 * Tries all snacks without a piece to spare, in alphabetical order of their pieces, and turns back where {@link Bounds}
 * show that nothing better can follow.
 *
 * <p>The alphabetical order (pieces sorted by code, most pieces of a kind first) settles the last tie: of equal snacks
 * the first found stays.
 *
 * <p>Only snacks without a piece to spare are tried. That loses no best answer: dropping a spare piece never raises
 * energy, weight or cost, and lowers the number of pieces, which is compared under all readings but
 * {@link Smallest#GRAMS}; there the snack without the spare piece is at least as small, and the same in all three
 * figures only if the piece has no weight, no energy and no cost.
 */
final class DepthFirst {
    private final List<Piece> pieces;
    private final Window window;
    private final Best best;
    private final Bounds bounds;
    private final Chosen chosen;

    private DepthFirst(List<Piece> pieces, Window window, Smallest smallest, int answers) {
        this.pieces = pieces;
        this.window = window;
        Ranking ranking = new Ranking(smallest, pieces);
        best = new Best(ranking, answers);
        bounds = new Bounds(pieces, window, ranking);
        chosen = new Chosen(pieces, ranking);
    }

    /**
     * The smallest snacks that do what the window says, best first; empty when there is none.
     *
     * @param pieces sorted by code, as many of each as can be needed ({@link Units#needed})
     */
    static List<Choice> search(List<Piece> pieces, Window window, Smallest smallest, int answers) {
        DepthFirst search = new DepthFirst(pieces, window, smallest, answers);
        search.goOn(0);
        return search.best.choices();
    }

    private void goOn(int from) {
        if (chosen.hasOneToSpare(window)) {
            return;
        }
        if (chosen.covers(window)) {
            best.offer(chosen.rank(), chosen.choice());
            return; // every further piece would be one to spare
        }
        if (chosen.kinds() < window.kindsMost()) {
            for (int kind = from; kind < pieces.size() && !bounds.hopeless(chosen, kind, best.limit()); kind++) {
                goOnWith(kind);
            }
        }
    }

    private void goOnWith(int kind) {
        int most = pieces.get(kind).most();
        chosen.choose(kind, most);
        for (int count = most; count > 0; count--) {
            if (chosen.isWithin(window)) {
                goOn(kind + 1);
            }
            chosen.putOneBack();
        }
        chosen.forgetLast();
    }
}
