/** The command that opens the page on this computer. */
@NullMarked
package batchwright.cli.serve;

import org.jspecify.annotations.NullMarked;
