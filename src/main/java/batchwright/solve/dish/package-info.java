/**
 * One dish alone: the cheapest way to fill containers that are all alike. Start at {@link batchwright.solve.dish.DishSolver}.
 */
@NullMarked
package batchwright.solve.dish;

import org.jspecify.annotations.NullMarked;
