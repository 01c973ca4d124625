package batchwright.cli;

import java.io.PrintStream;

/**
 * Where a command writes.
 *
 * @param out answers
 * @param err errors, warnings and notes
 */
record Terminal(PrintStream out, PrintStream err) {}
