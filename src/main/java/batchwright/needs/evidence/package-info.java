/** What stands beside every figure of needs: its source, its usual error, the people it was derived on. */
@NullMarked
package batchwright.needs.evidence;

import org.jspecify.annotations.NullMarked;
