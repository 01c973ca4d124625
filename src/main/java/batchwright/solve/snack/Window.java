package batchwright.solve.snack;

/**
 * What a snack has to do, in the whole numbers of {@link Units}.
 *
 * @param energyLeast least energy, at least 0
 * @param energyMost most energy, or {@link #NO_LIMIT}
 * @param proteinLeast least protein, at least 0
 * @param costMost most cost, or {@link #NO_LIMIT}
 * @param kindsMost most different items
 */
record Window(long energyLeast, long energyMost, long proteinLeast, long costMost, int kindsMost) {

    /** Above every total ({@link Units#MOST}). */
    static final long NO_LIMIT = Long.MAX_VALUE / 4;

    Window withEnergy(long least, long most) {
        return new Window(least, most, proteinLeast, costMost, kindsMost);
    }

    Window withProtein(long least) {
        return new Window(energyLeast, energyMost, least, costMost, kindsMost);
    }

    /**
     * The most pieces of this kind that can all be needed. More would leave one to spare, or break a limit; a piece that
     * brings nothing asked for is never needed. Keeps the search small however large the stock.
     */
    int mostNeeded(Piece piece) {
        long needed = Math.max(piecesFor(energyLeast, piece.energy()), piecesFor(proteinLeast, piece.protein()));
        long allowed = Math.min(piecesWithin(energyMost, piece.energy()), piecesWithin(costMost, piece.cost()));
        return (int) Math.min(piece.most(), Math.min(needed, allowed));
    }

    private static long piecesFor(long least, long each) {
        return each == 0 ? 0 : (least + each - 1) / each;
    }

    private static long piecesWithin(long most, long each) {
        return each == 0 ? NO_LIMIT : most / each;
    }
}
