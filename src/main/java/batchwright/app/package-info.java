/**
 * The use cases, one class each; the only place where a planner is chosen.
 */
@NullMarked
package batchwright.app;

import org.jspecify.annotations.NullMarked;
