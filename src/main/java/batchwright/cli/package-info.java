/**
 * The thin door: command line in, text out, exit code. One class per command.
 */
@NullMarked
package batchwright.cli;

import org.jspecify.annotations.NullMarked;
