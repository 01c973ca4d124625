package batchwright.cli;

import java.io.PrintStream;
import java.util.Optional;

/**
 * Where a command writes, and whom it may ask.
 *
 * @param out answers
 * @param err errors, warnings, notes and questions
 * @param input somebody at the keyboard; empty in a script or a pipe
 */
record Terminal(PrintStream out, PrintStream err, Optional<Input> input) {}
