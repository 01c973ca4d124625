/**
 * Containers that are filled already and eaten in a plan: to a search each is a dish whose one food is at home and nowhere sold. Uses
 * `food` alone.
 */
@NullMarked
package batchwright.plan.left;

import org.jspecify.annotations.NullMarked;
