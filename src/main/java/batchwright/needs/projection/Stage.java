package batchwright.needs.projection;

import batchwright.needs.dynamics.BodyState;
import batchwright.quantity.Energy;

/**
 * Some weeks at one intake.
 *
 * @param firstWeek from 1
 * @param lastWeek the same or later
 * @param intake each day, in whole kcal
 * @param after the body at the end
 * @param limited whether the goal asks for less than may be eaten, so that this is the least instead
 */
public record Stage(int firstWeek, int lastWeek, Energy intake, BodyState after, boolean limited) {}
