package batchwright.cli;

import batchwright.answer.Fault;
import batchwright.app.FailedAudit;
import batchwright.app.MakePlan;
import batchwright.app.Refused;
import batchwright.report.files.FaultsJson;
import batchwright.text.Echo;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine;

/** Runs one command line and turns whatever happens into an exit code and, where needed, a short message. */
final class CommandRunner {
    private static final String HELP = "help";
    /** Length of an argument; no path is longer. */
    private static final int LONGEST = 4096;

    private static final int LONGEST_ECHO = 60;

    private final Terminal terminal;
    private final MakePlan plans;
    private final Path here;
    private final Clock clock;

    CommandRunner(Terminal terminal, MakePlan plans, Path here, Clock clock) {
        this.terminal = terminal;
        this.plans = plans;
        this.here = here;
        this.clock = clock;
    }

    int run(String[] args) {
        List<String> given = List.of(args);
        try {
            return arrived(execute(args, given));
        } catch (StackOverflowError | OutOfMemoryError tooLarge) {
            return arrived(failed(tooLarge, given));
        }
    }

    private int execute(String[] args, List<String> given) {
        Optional<String> tooLong =
                given.stream().filter(arg -> arg.length() > LONGEST).findFirst();
        if (tooLong.isPresent()) {
            int length = tooLong.get().length();
            return failed(
                    Refused.because(
                            "an argument is " + length + " characters long: "
                                    + Echo.shortened(LONGEST_ECHO, tooLong.get()),
                            "Write at most " + LONGEST + "."),
                    given);
        }
        CommandLine line = CommandLines.of(new Batchwright(terminal, plans, here, clock));
        if (args.length == 0) {
            terminal.out().print(CommandLines.shortHelp(line));
            return ExitCode.DONE.code();
        }
        line.setOut(new PrintWriter(terminal.out(), true, StandardCharsets.UTF_8));
        line.setParameterExceptionHandler(
                (wrong, ignored) -> fail(wrong, List.of(BadCommandLine.fault(wrong)), ExitCode.NOT_RIGHT, given));
        line.setExecutionExceptionHandler((thrown, command, parsed) -> failed(thrown, given));
        return line.execute(helpLast(args));
    }

    /** A script must not take an answer that was lost for one that is empty. */
    private int arrived(int code) {
        return terminal.out()
                .failure()
                .map(why -> {
                    terminal.err()
                            .print(Fault.of(
                                            "the answer could not be written" + (why.isEmpty() ? "" : ": " + why),
                                            "Standard output takes no more: is it closed, or its disk full?")
                                    .text());
                    return ExitCode.of(code).notWritten().code();
                })
                .orElse(code);
    }

    /** "help plan" means "plan --help". */
    private static String[] helpLast(String[] args) {
        return args[0].equals(HELP)
                ? Stream.concat(Arrays.stream(args).skip(1), Stream.of("--help"))
                        .toArray(String[]::new)
                : args;
    }

    private int failed(Throwable thrown, List<String> args) {
        Optional<Fault> memory = MemoryNeeded.by(thrown);
        if (memory.isPresent()) {
            return fail(thrown, List.of(memory.get()), ExitCode.NOT_RIGHT, args);
        }
        if (thrown instanceof Refused refused) {
            return fail(thrown, refused.faults(), ExitCode.NOT_RIGHT, args);
        }
        if (thrown instanceof FailedAudit audit) {
            return fail(
                    thrown,
                    List.of(Fault.of(
                            "a fault of ours: the plan did not pass its audit, so it is not shown",
                            "Failed checks: " + audit.failures())),
                    ExitCode.OUR_FAULT,
                    args);
        }
        return fail(
                thrown,
                List.of(Fault.of(
                        "a fault of ours: the program met something it cannot handle",
                        "Your files are unchanged. --debug shows where it happened.")),
                ExitCode.OUR_FAULT,
                args);
    }

    private int fail(Throwable thrown, List<Fault> faults, ExitCode exit, List<String> args) {
        if (args.contains("--debug")) {
            var trace = new StringWriter();
            thrown.printStackTrace(new PrintWriter(trace));
            String text = trace.toString().replace(System.lineSeparator(), "\n").replace("\t", "    ");
            terminal.err().print(terminal.shown(text, false));
        }
        boolean ascii = args.contains(Batchwright.ASCII);
        faults.forEach(fault -> terminal.err().print(terminal.shown(fault.text(), ascii)));
        WhereToLook.below(faults).forEach(line -> terminal.err().print(line + "\n"));
        if (args.contains("--json") && !terminal.out().isUsed()) {
            terminal.out().print(FaultsJson.of(faults));
        }
        return exit.code();
    }
}
