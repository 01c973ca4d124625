package batchwright.cli;

import batchwright.app.MakePlan;
import batchwright.app.OutputFiles;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.cli.book.BookCommand;
import batchwright.cli.book.TodayCommand;
import batchwright.cli.serve.ServeCommand;
import batchwright.report.print.Commands;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The program itself: the options that every command has. */
@Command(
        name = "batchwright",
        header = "Batchwright: from a body and a goal to a fridge of labelled containers.",
        customSynopsis = "java -jar target/batchwright.jar COMMAND [OPTIONS]",
        subcommands = {
            NeedsCommand.class,
            PlanCommand.class,
            SnackCommand.class,
            DishesCommand.class,
            FoodsCommand.class,
            BookCommand.class,
            TodayCommand.class,
            RosterCommand.class,
            CheckCommand.class,
            ServeCommand.class,
            InitCommand.class
        },
        footer = {
            "  java -jar target/batchwright.jar needs lifter-gaining",
            "  java -jar target/batchwright.jar plan lifter-gaining --budget 60"
        })
public final class Batchwright implements Runnable {
    static final String ASCII = "--ascii";

    @Option(
            names = "--data",
            scope = ScopeType.INHERIT,
            paramLabel = "DIR",
            description =
                    "Folder that holds foods/ and profiles/. Without it: the current folder if it has foods/, else the"
                            + " starter files.")
    @Nullable
    String data;

    @Option(
            names = "--date",
            scope = ScopeType.INHERIT,
            paramLabel = "YYYY-MM-DD",
            description = "The cooking day: use-by dates and ages of prices count from it; default today.")
    @Nullable
    String date;

    @Option(names = "--json", scope = ScopeType.INHERIT, description = "Answer in JSON, for scripts.")
    boolean json;

    @Option(
            names = ASCII,
            scope = ScopeType.INHERIT,
            description =
                    "Write names of your files in ASCII as well: for screens that show nothing else. Not with --json.")
    boolean ascii;

    @Option(names = "--debug", scope = ScopeType.INHERIT, description = "Show where in the program an error arose.")
    boolean debug;

    @Option(
            names = {"-h", "--help"},
            scope = ScopeType.INHERIT,
            usageHelp = true,
            description = "Show this help.")
    boolean help;

    @Option(names = "--version", versionHelp = true, description = "Show which version this is.")
    boolean version;

    private final Terminal terminal;
    private final MakePlan plans;
    private final Path here;
    private final Clock clock;

    Batchwright(Terminal terminal, MakePlan plans, Path here, Clock clock) {
        this.terminal = terminal;
        this.plans = plans;
        this.here = here;
        this.clock = clock;
    }

    /** Options without a command. */
    @Override
    public void run() {
        throw Refused.because(
                "no command is named",
                "Name one of needs, plan, snack, dishes, foods, book, today, roster, serve, check, init.");
    }

    public MakePlan plans() {
        return plans;
    }

    /** A folder as named on the command line. */
    Path folder(String name) {
        try {
            return here.resolve(name);
        } catch (InvalidPathException notAPath) {
            throw Refused.because("\"" + name + "\" cannot be the name of a folder", "Name a folder.");
        }
    }

    /** The files that a command writes beside its answer. */
    public FilesBeside filesBeside(boolean replacesAny) {
        return new FilesBeside(
                new OutputFiles(folder(Objects.requireNonNullElse(data, "")), replacesAny),
                this::folder,
                this::complain);
    }

    /** The files that this command line reads. */
    public Workspace workspace() {
        return Workspace.open(namedFolder(), here, cookingDay(), this::complain);
    }

    /** The folder that the command line names; empty when it names none. */
    public Optional<Path> namedFolder() {
        return Optional.ofNullable(data).map(this::folder);
    }

    /** The current folder. */
    public Path here() {
        return here;
    }

    public Clock clock() {
        return clock;
    }

    /** The day that the command line names; empty when it names none. */
    public Optional<LocalDate> namedDay() {
        return Optional.ofNullable(date).map(text -> new Given("--date", text).day());
    }

    /** What comes next reads the same files on the same day. */
    public Commands commands() {
        return new Commands((data == null ? "" : " --data " + (data.matches("\\S+") ? data : "\"" + data + "\""))
                + (date == null ? "" : " --date " + date));
    }

    private LocalDate cookingDay() {
        return namedDay().orElseGet(() -> LocalDate.now(clock));
    }

    /** @return the exit code */
    public int answer(String answer) {
        return answer(answer, ExitCode.DONE);
    }

    /** Shows something at once, while the command goes on. */
    public void tell(String text) {
        terminal.out().print(shown(text));
        terminal.out().flush();
    }

    int answer(String answer, ExitCode exit) {
        terminal.out().print(json ? answer : shown(answer));
        return exit.code();
    }

    /** Whether the answer is for a script. */
    public boolean isJson() {
        return json;
    }

    /** Somebody to ask, unless the command line says that there is nobody. */
    Optional<Input> keyboard() {
        return terminal.input();
    }

    /** Tells how far a search is, if it takes long and somebody looks. */
    ProgressLine progress(Interruption interruption) {
        return new ProgressLine(terminal.err(), terminal.somebodyLooks(), interruption::asked).start();
    }

    public void complain(String text) {
        terminal.err().print(shown(text));
    }

    private String shown(String text) {
        return terminal.shown(text, ascii);
    }

    OptionalInt columns() {
        return terminal.columns().get();
    }
}
