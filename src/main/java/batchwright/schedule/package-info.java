/**
 * When to do what in one cooking session: the steps of all its dishes, one cook, four burners and one oven, in the least time.
 * Start at {@link batchwright.schedule.Schedule#of}.
 */
@NullMarked
package batchwright.schedule;

import org.jspecify.annotations.NullMarked;
