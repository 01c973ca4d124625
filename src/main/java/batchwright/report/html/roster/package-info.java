/** The page about all clients of a roster. */
@NullMarked
package batchwright.report.html.roster;

import org.jspecify.annotations.NullMarked;
