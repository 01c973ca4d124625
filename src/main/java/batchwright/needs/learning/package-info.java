/** Whether a target should change by what weighings say: an offer, a reason to wait, or a reason to stop. Changes nothing itself. */
@NullMarked
package batchwright.needs.learning;

import org.jspecify.annotations.NullMarked;
