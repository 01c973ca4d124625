/** Many clients in one run: each line of a list is answered by the use case that answers one plan. */
@NullMarked
package batchwright.app.roster;

import org.jspecify.annotations.NullMarked;
