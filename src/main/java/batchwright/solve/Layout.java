package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.Seat;
import java.util.List;
import java.util.Map;

/**
 * Which containers each eater has on which day.
 *
 * @param containers for each seat and dish, how many in all; dishes that are not served are absent
 * @param days for each seat, for each day in order, how many containers of each dish
 */
record Layout(Map<Seat, Map<Dish, Integer>> containers, Map<Seat, List<Map<Dish, Integer>>> days) {}
