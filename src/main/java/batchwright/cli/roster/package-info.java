/** The columns and files of a roster. */
@NullMarked
package batchwright.cli.roster;

import org.jspecify.annotations.NullMarked;
