package batchwright.limit;

/**
 * Why a limit is what it is.
 *
 * @param says how the figure came about, such as 14 g per 1000 kcal; empty when it was simply asked for
 * @param source where it is found, short enough to print: a publication, a choice of this program, or the eater's profile
 */
public record Reason(String says, String source) {}
