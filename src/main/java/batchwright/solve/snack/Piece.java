package batchwright.solve.snack;

/** A {@link SnackItem} in whole numbers; what they count is kept by {@link Units}. */
record Piece(String code, long energy, long protein, long grams, long cost, int most, boolean atHome) {

    Piece withMost(int fewer) {
        return new Piece(code, energy, protein, grams, cost, fewer, atHome);
    }
}
