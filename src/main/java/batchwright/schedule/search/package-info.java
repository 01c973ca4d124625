/**
 * Activities that share resources, placed in time so that the last ends as early as can be. Knows whole numbers only: no
 * food, no kitchen.
 */
@NullMarked
package batchwright.schedule.search;

import org.jspecify.annotations.NullMarked;
