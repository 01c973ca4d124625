package batchwright.schedule;

import batchwright.food.Dish;

/**
 * Cooked food that stands longer than it should until it is in its containers: no order of work that was found is better.
 *
 * @param step number of the step it comes from
 * @param minutes from the end of that step until it is filled, or heated again
 * @param most that it should be
 */
public record StandsTooLong(Dish dish, int step, int minutes, int most) {}
