/** A list of clients in, their answers out, and a page that tells who needs attention. */
@NullMarked
package batchwright.report.roster;

import org.jspecify.annotations.NullMarked;
