package batchwright.solve;

/**
 * A finished plan, still as columns of its model.
 *
 * @param values by column index
 */
record DaysSolution(DaysDraft draft, double[] values) {}
