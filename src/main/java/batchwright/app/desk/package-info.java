/** A plan that is changed while somebody looks on: answered at once near the plan before, and searched to the end behind that. */
@NullMarked
package batchwright.app.desk;

import org.jspecify.annotations.NullMarked;
