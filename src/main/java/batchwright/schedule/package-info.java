/**
 * The order of work in one cooking session: all its dishes' steps in the least time in which nothing cooked stands too long.
 * Start at {@link batchwright.schedule.Schedule#of}.
 */
@NullMarked
package batchwright.schedule;

import org.jspecify.annotations.NullMarked;
