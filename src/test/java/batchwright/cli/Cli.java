package batchwright.cli;

import batchwright.app.MakePlan;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Runs command lines in a folder, as a shell would. */
final class Cli {
    /** Shortly after the prices of the starter files. */
    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private static final Clock NOON = Clock.fixed(TODAY.atTime(12, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);

    private final Path here;
    private final MakePlan plans;
    private final Optional<Input> input;

    private Cli(Path here, MakePlan plans, Optional<Input> input) {
        this.here = here;
        this.plans = plans;
        this.input = input;
    }

    static Cli in(Path here) {
        return in(here, new MakePlan());
    }

    static Cli in(Path here, MakePlan plans) {
        return new Cli(here, plans, Optional.empty());
    }

    /** With somebody at the keyboard who types these lines, and then no more. */
    Cli typing(String... lines) {
        Iterator<String> typed = List.of(lines).iterator();
        return new Cli(here, plans, Optional.of(() -> typed.hasNext() ? Optional.of(typed.next()) : Optional.empty()));
    }

    record Result(int code, String out, String err) {
        /** The answer with all blanks and line ends as one blank: where lines break does not matter. */
        String flat() {
            return out.replaceAll("\\s+", " ");
        }

        String both() {
            return out + err;
        }
    }

    Result run(String... args) {
        var out = new ByteArrayOutputStream();
        var err = new ByteArrayOutputStream();
        var terminal = new Terminal(
                new AnswerStream(out, () -> false),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                input,
                () -> false,
                OptionalInt::empty,
                false);
        int code = Main.run(args, terminal, plans, here, NOON);
        return new Result(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
