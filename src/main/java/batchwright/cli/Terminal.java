package batchwright.cli;

import batchwright.report.print.Ascii;
import batchwright.text.Echo;
import java.io.PrintStream;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * Where a command writes, and whom it may ask.
 *
 * @param out answers
 * @param err errors, warnings, notes and questions
 * @param input somebody at the keyboard; empty in a script or a pipe
 * @param somebodyLooks whether {@code err} appears on a terminal at once
 * @param columns how wide the terminal is on which {@code out} appears; empty when it appears on none
 * @param asciiOnly whether that terminal can show nothing but ASCII
 */
record Terminal(
        AnswerStream out,
        PrintStream err,
        Optional<Input> input,
        BooleanSupplier somebodyLooks,
        Supplier<OptionalInt> columns,
        boolean asciiOnly) {
    /** As the terminal can show it, and without anything that it would obey. */
    String shown(String text, boolean ascii) {
        String safe = Echo.lines(text);
        return ascii || asciiOnly ? Ascii.of(safe) : safe;
    }
}
