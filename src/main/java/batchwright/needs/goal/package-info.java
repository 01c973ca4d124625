/** What a goal means in energy and in weight. */
@NullMarked
package batchwright.needs.goal;

import org.jspecify.annotations.NullMarked;
