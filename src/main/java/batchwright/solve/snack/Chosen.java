package batchwright.solve.snack;

import java.util.List;

/** The pieces chosen so far on the way down, with their sums kept up to date. */
final class Chosen {
    private final List<Piece> pieces;
    private final long[] ranks;
    private final int[] counts;
    private final int[] kinds;
    private int kindsChosen;
    private long rank;
    private long energy;
    private long protein;
    private long cost;

    Chosen(List<Piece> pieces, Ranking ranking) {
        this.pieces = pieces;
        ranks = pieces.stream().mapToLong(ranking::rank).toArray();
        counts = new int[pieces.size()];
        kinds = new int[pieces.size()];
    }

    /** Takes the first pieces of a kind. */
    void choose(int kind, int count) {
        kinds[kindsChosen++] = kind;
        change(kind, count);
    }

    /** Puts one piece of the kind chosen last back. */
    void putOneBack() {
        change(kinds[kindsChosen - 1], -1);
    }

    /** Forgets the kind chosen last, of which no piece is left. */
    void forgetLast() {
        kindsChosen--;
    }

    private void change(int kind, int by) {
        Piece piece = pieces.get(kind);
        counts[kind] += by;
        rank += by * ranks[kind];
        energy += by * piece.energy();
        protein += by * piece.protein();
        cost += by * piece.cost();
    }

    boolean covers(Window window) {
        return energy >= window.energyLeast() && protein >= window.proteinLeast();
    }

    boolean isWithin(Window window) {
        return energy <= window.energyMost() && cost <= window.costMost();
    }

    /**
     * Whether a piece can be dropped, whatever is still to be chosen: the finished snack has at least the energy and
     * protein asked for, and at least those chosen so far.
     */
    boolean hasOneToSpare(Window window) {
        long energyAtLeast = Math.max(energy, window.energyLeast());
        long proteinAtLeast = Math.max(protein, window.proteinLeast());
        for (int i = 0; i < kindsChosen; i++) {
            Piece piece = pieces.get(kinds[i]);
            if (energyAtLeast - piece.energy() >= window.energyLeast()
                    && proteinAtLeast - piece.protein() >= window.proteinLeast()) {
                return true;
            }
        }
        return false;
    }

    int kinds() {
        return kindsChosen;
    }

    long rank() {
        return rank;
    }

    long energy() {
        return energy;
    }

    long protein() {
        return protein;
    }

    long cost() {
        return cost;
    }

    Choice choice() {
        return new Choice(pieces, counts.clone());
    }
}
