package batchwright.solve.mip;

/**
 * A quantity to be decided.
 *
 * @param index place in the model, from 0
 * @param name for people: letters, digits, underscore, dot and hyphen
 * @param whole takes whole numbers only
 * @param rank when branching, columns of a lower rank are decided first; {@link #LATER}: not by branching here, but when the
 *     rest is completed
 */
public record Column(int index, String name, double lower, double upper, boolean whole, int rank) {
    public static final int LATER = Integer.MAX_VALUE;

    /** What is this near to a whole number counts as whole. */
    static final double WHOLE = 1e-6;
}
