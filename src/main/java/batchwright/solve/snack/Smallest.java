package batchwright.solve.snack;

/**
 * What "the smallest snack" means. Each reading compares its first figure; equal ones go on to the second, then the
 * third. Answers that are still equal are ordered by more pieces from the pantry, then by the codes of their pieces in
 * alphabetical order, so the order never depends on the order of the items.
 */
public enum Smallest {
    /** Least energy, then fewest pieces, then least cost. */
    ENERGY,
    /** Fewest pieces, then least energy, then least cost. */
    PIECES,
    /** Least cost, then least energy, then fewest pieces. */
    COST,
    /** Least weight, then least energy, then least cost. */
    GRAMS
}
