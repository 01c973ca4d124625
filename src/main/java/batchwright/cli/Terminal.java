package batchwright.cli;

import java.io.PrintStream;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Where a command writes, and whom it may ask.
 *
 * @param out answers
 * @param err errors, warnings, notes and questions
 * @param input somebody at the keyboard; empty in a script or a pipe
 * @param somebodyLooks whether {@code err} appears on a terminal at once
 */
record Terminal(PrintStream out, PrintStream err, Optional<Input> input, BooleanSupplier somebodyLooks) {
    /** Nobody looks on: what is written is read later. */
    Terminal(PrintStream out, PrintStream err, Optional<Input> input) {
        this(out, err, input, () -> false);
    }
}
