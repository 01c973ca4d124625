/** Making a proof of totals that {@code audit.proof} can check: the search is asked for splits and multipliers, never believed. */
@NullMarked
package batchwright.app.proof;

import org.jspecify.annotations.NullMarked;
