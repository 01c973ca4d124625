/**
 * From a body and a goal to a target: one class per published equation, each with its source, and the cautions that stop planning.
 */
@NullMarked
package batchwright.needs;

import org.jspecify.annotations.NullMarked;
