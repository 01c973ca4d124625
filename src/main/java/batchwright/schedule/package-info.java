/**
 * When to do what in one cooking session: the steps of all its dishes, the cooks and what the kitchen has, in the least time in
 * which nothing cooked stands too long.
 * Start at {@link batchwright.schedule.Schedule#of}.
 */
@NullMarked
package batchwright.schedule;

import org.jspecify.annotations.NullMarked;
