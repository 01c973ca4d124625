package batchwright.cli;

import batchwright.app.MakePlan;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** A program for tests: most of what Batchwright can say about the kitchen in the current folder, in one process. */
final class ManyCommands {
    private static final List<String> COMMANDS = List.of(
            "check --json",
            "check --data broken",
            "dishes",
            "dishes lentil_ragu",
            "dishes lentil_ragu --kcal 700",
            "dishes lentil_ragu --kcal 4000",
            "foods oats",
            "foods kiwi --all",
            "foods --compare",
            "foods --take 20031",
            "foods ISTANBUL",
            "needs lifter-gaining --weeks 4",
            "needs desk-cutting --json",
            "needs --activities",
            "needs --sex male --age 30",
            "snack 430 --protein 15",
            "plan parent-holding --days 2 --cook lentil_ragu --seconds 300 --date 2026-11-25"
                    + " --report r.html --shopping s.csv --calendar c.ics --model m.mps",
            "plan parent-holding --days 0",
            "needs X --date 2026-13-01",
            "dishes --help");

    private static final List<String> WRITTEN = List.of("r.html", "s.csv", "c.ics", "m.mps", "m.names.csv");

    private ManyCommands() {}

    private static int run(String command, PrintStream out) {
        var terminal = new Terminal(
                new AnswerStream(out, () -> false), out, Optional.empty(), () -> false, OptionalInt::empty, false);
        return Main.run(
                command.split(" ", -1), terminal, new MakePlan(), Path.of(""), Clock.system(ZoneId.systemDefault()));
    }

    public static void main(String[] args) throws Exception {
        var out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
        for (String command : COMMANDS) {
            out.println("== " + command);
            out.println("== " + run(command, out));
        }
        for (String file : WRITTEN) {
            out.println("== " + file);
            out.write(Files.readAllBytes(Path.of(file)));
            Files.delete(Path.of(file));
        }
        out.flush();
    }
}
