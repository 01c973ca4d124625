/**
 * Where weight, fat and lean mass go over the weeks: the model of Hall and others for adults, integrated three times, at the total
 * as estimated and at both ends of its range.
 */
@NullMarked
package batchwright.needs.projection;

import org.jspecify.annotations.NullMarked;
