/**
 * Where weight, fat and lean mass go over the weeks at the target, and how the target changes in steps: {@code needs.dynamics}
 * followed within safe limits.
 */
@NullMarked
package batchwright.needs.projection;

import org.jspecify.annotations.NullMarked;
