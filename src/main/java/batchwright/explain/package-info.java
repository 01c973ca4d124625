/**
 * Why a plan is as it is: which rules clash when there is none, and the smallest change that cures it.
 */
@NullMarked
package batchwright.explain;

import org.jspecify.annotations.NullMarked;
