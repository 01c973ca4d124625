package batchwright.cli;

import batchwright.app.MakePlan;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOError;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;

/** Starts the program: command line in, text out, exit code. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        // One language for all: no digits, letters or dates of the system's own.
        Locale.setDefault(Locale.ROOT);
        // Always UTF-8, so that the same files give the same bytes whatever the locale.
        var out = new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
        var err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        int code = run(args, out, err);
        out.flush();
        System.exit(code);
    }

    /** Runs one command in the current folder; never ends the process. */
    public static int run(String[] args, PrintStream out, PrintStream err) {
        return run(
                args,
                new Terminal(out, err, keyboard(), Screen::isTerminal, Screen::columns, Screen.isAsciiOnly()),
                new MakePlan(),
                Path.of(""),
                Clock.system(ZoneId.systemDefault()));
    }

    /** There is a console only when both sides of it are: nothing is asked in a pipe. */
    private static Optional<Input> keyboard() {
        return Optional.ofNullable(System.console()).map(console -> () -> typed(console));
    }

    /** A line; nothing when the terminal is gone as well as when no more is typed. */
    private static Optional<String> typed(Console console) {
        try {
            return Optional.ofNullable(console.readLine());
        } catch (IOError gone) {
            return Optional.empty();
        }
    }

    static int run(String[] args, Terminal terminal, MakePlan plans, Path here, Clock clock) {
        return new CommandRunner(terminal, plans, here, clock).run(args);
    }
}
