package batchwright.cli.book;

import batchwright.answer.AtHome;
import batchwright.answer.BookAnswer;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.app.book.FindAtHome;
import batchwright.app.book.OneEatersLines;
import batchwright.app.book.WriteInBook;
import batchwright.cli.Batchwright;
import batchwright.cli.Given;
import batchwright.report.book.BookJson;
import batchwright.report.book.BookText;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** book WHAT HAPPENED */
@Command(
        name = "book",
        header = "Write down what happened; what is at home follows from it.",
        customSynopsis = {"book [WHAT HAPPENED] [--on DATE] [OPTIONS]", "book undo [LINE | all]"},
        description = {
            "Say it as the lines of profiles/book.txt do:",
            "  weighed EATER 74.2 kg",
            "  bought 4 x 283 g FOOD for 7.96 until DATE",
            "  bought list | cooked as planned | filled as planned",
            "  cooked DISH from 300 g FOOD, 200 g FOOD",
            "  filled 4 DISH for EATER in fridge until DATE, 640 kcal",
            "  filled DISH --pot-with-lid 5.3kg --pot 1.9kg: only shows the shares;",
            "    with as planned behind DISH it is written as well",
            "  ate EATER as planned | DISH | 2 DISH | 56 g FOOD | 1 medium FOOD",
            "  ate EATER out 900 kcal | nothing else | not logged",
            "  gave away, threw away 1 DISH of EATER | 200 g FOOD",
            "  thawed 2 DISH of EATER | thawed as planned | froze 2 DISH of EATER",
            "  counted 350 g FOOD until DATE",
            "  ill, travel, creatine, cycle EATER",
            "With nothing said: the last lines, and what is at home."
        },
        footer = {"  java -jar target/batchwright.jar book", "  java -jar target/batchwright.jar book --json"})
public final class BookCommand implements Callable<Integer> {
    private static final String UNDO = "undo";
    private static final String ALL = "all";
    private static final int MOST_LINES = 1_000_000;

    /** Set by the command line's parser before {@link #call()}. */
    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Batchwright program;

    @Parameters(arity = "0..*", hideParamSyntax = true, paramLabel = "WHAT HAPPENED", description = "See above.")
    private List<String> words = new ArrayList<>();

    @Option(
            names = "--on",
            paramLabel = "DATE",
            description = "The day it happened: a date, today or yesterday; default today.")
    private @Nullable String on;

    @Option(names = "--sure", description = "Write it although it seems not to fit what is known.")
    private boolean sure;

    @Mixin
    private PotOptions pot = new PotOptions();

    @Option(
            names = "--export",
            paramLabel = "EATER",
            description = "Print the profile of an eater and all lines about them.")
    private @Nullable String export;

    @Option(
            names = "--remove",
            paramLabel = "EATER",
            description = "Take the profile of an eater and all lines about them away, for good. Needs --sure.")
    private @Nullable String remove;

    @Override
    public Integer call() {
        Workspace workspace = program.workspace();
        if (export != null) {
            return program.answer(new OneEatersLines(workspace, export).export());
        }
        if (remove != null) {
            List<String> changed = new OneEatersLines(workspace, remove).remove(sure);
            return program.answer(BookText.removed(changed));
        }
        if (String.join("", words).isBlank()) {
            AtHome home = FindAtHome.answer(workspace);
            return program.answer(program.isJson() ? BookJson.of(home) : BookText.of(home));
        }
        LocalDate day = day(workspace.cookingDay());
        if (pot.isGiven()) {
            return pot.share(program, workspace, words, day, sure);
        }
        BookAnswer answer = written(workspace, day);
        return program.answer(program.isJson() ? BookJson.of(answer) : BookText.of(answer));
    }

    private BookAnswer written(Workspace workspace, LocalDate day) {
        var book = new WriteInBook(workspace, workspace.kitchen(), sure);
        if (words.get(0).equals(UNDO)) {
            if (words.size() > 2) {
                throw Refused.because("more than one line is named", "Name the number of one line: book undo 14.");
            }
            if (words.size() == 2 && words.get(1).equals(ALL)) {
                return book.undoAll();
            }
            return book.undo(
                    words.size() == 1
                            ? OptionalInt.empty()
                            : OptionalInt.of(new Given("LINE", words.get(1)).whole(1, MOST_LINES, "lines")));
        }
        return book.add(String.join(" ", words), day);
    }

    private LocalDate day(LocalDate today) {
        if (on == null || on.toLowerCase(Locale.ROOT).equals("today")) {
            return today;
        }
        return on.toLowerCase(Locale.ROOT).equals("yesterday") ? today.minusDays(1) : new Given("--on", on).day();
    }
}
