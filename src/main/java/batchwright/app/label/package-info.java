/** A food copied from the label of its pack. */
@NullMarked
package batchwright.app.label;

import org.jspecify.annotations.NullMarked;
