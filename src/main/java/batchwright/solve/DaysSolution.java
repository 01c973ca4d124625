package batchwright.solve;

import batchwright.plan.Seat;
import batchwright.plan.Snack;
import java.util.List;
import java.util.Map;

/**
 * A finished plan, still as columns of its model.
 *
 * @param values by column index
 * @param snacks for each eater, for each day
 */
record DaysSolution(DaysDraft draft, double[] values, Map<Seat, Map<Integer, List<Snack>>> snacks) {}
