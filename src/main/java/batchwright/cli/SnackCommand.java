package batchwright.cli;

import batchwright.answer.SnackAnswers;
import batchwright.app.FindSnack;
import batchwright.app.Refused;
import batchwright.app.TypedSum;
import batchwright.report.snacks.SnackJson;
import batchwright.report.snacks.SnackText;
import batchwright.text.NearestName;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** snack KCAL */
@Command(
        name = "snack",
        header = "The smallest snack that closes a calorie gap.",
        customSynopsis = "snack KCAL [--protein G] [--by energy|pieces|cost|grams] [OPTIONS]",
        footer = {
            "  java -jar target/batchwright.jar snack 430 --protein 15 --for lifter-gaining",
            "  java -jar target/batchwright.jar snack 250 --by cost --kinds 1"
        })
final class SnackCommand implements Callable<Integer> {
    private static final List<String> READINGS = List.of("energy", "pieces", "cost", "grams");
    private static final int MOST_KCAL = 5000;
    private static final int MOST_PROTEIN = 300;
    private static final int MOST_KINDS = 4;

    /** Set by the command line's parser before {@link #call()}. */
    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Batchwright program;

    @Parameters(
            arity = "0..*",
            hideParamSyntax = true,
            paramLabel = "KCAL",
            description = "The calorie gap to close [kcal], 0 to 5000.")
    private List<String> gap = new ArrayList<>();

    @Option(
            names = "--protein",
            paramLabel = "G",
            defaultValue = "0",
            description = "Least protein [g]; default ${DEFAULT-VALUE}.")
    private String protein = "";

    @Option(
            names = "--by",
            paramLabel = "WHAT",
            defaultValue = "energy",
            description = "What smallest means: energy, pieces, cost or grams; default ${DEFAULT-VALUE}.")
    private String by = "";

    @Option(
            names = "--kinds",
            paramLabel = "N",
            defaultValue = "2",
            description = "Most kinds of snack, 1 to 4; default ${DEFAULT-VALUE}.")
    private String kinds = "";

    @Option(
            names = "--budget",
            paramLabel = "M",
            description = "Most the snack may cost, such as 1.50; default no limit.")
    private @Nullable String budget;

    @Option(names = "--most", paramLabel = "KCAL", description = "Most energy of the snack [kcal]; default no limit.")
    private @Nullable String most;

    @Option(
            names = "--for",
            paramLabel = "EATER",
            description = "A profile: leave out what this eater avoids; default everything on offer.")
    private @Nullable String eater;

    @Option(
            names = "--from-home",
            description = "Only what profiles/pantry.csv says is at home, and no more of it than there is.")
    private boolean fromHome;

    @Override
    public Integer call() {
        SnackAnswers.Ask ask = ask();
        Optional<TypedSum> most = Optional.ofNullable(budget).map(text -> new Given("--budget", text).money());
        SnackAnswers answers = FindSnack.answer(program.workspace(), ask, most, Optional.ofNullable(eater));
        return program.answer(
                program.json ? SnackJson.of(answers) : SnackText.of(answers),
                answers.stopped().isPresent() ? ExitCode.NO_PLAN : ExitCode.DONE);
    }

    private SnackAnswers.Ask ask() {
        if (gap.size() != 1) {
            throw Refused.because(
                    gap.isEmpty() ? "no calorie gap is given" : "more than one calorie gap is given",
                    "Enter one number of kcal: snack 430.");
        }
        BigDecimal kcal = new Given("KCAL", gap.get(0)).oneDecimal(MOST_KCAL, "kcal");
        Optional<BigDecimal> ceiling =
                Optional.ofNullable(most).map(text -> new Given("--most", text).oneDecimal(MOST_KCAL, "kcal"));
        if (ceiling.isPresent() && ceiling.get().compareTo(kcal) < 0) {
            throw Refused.because(
                    "--most " + most + " is less than the calorie gap of " + gap.get(0) + " kcal",
                    "Enter at least " + gap.get(0) + ", or leave --most out.");
        }
        return new SnackAnswers.Ask(
                kcal,
                new Given("--protein", protein).oneDecimal(MOST_PROTEIN, "g"),
                reading(),
                new Given("--kinds", kinds).whole(1, MOST_KINDS, "kinds"),
                Optional.empty(),
                ceiling,
                fromHome);
    }

    private String reading() {
        String wanted = by.toLowerCase(Locale.ROOT);
        if (!READINGS.contains(wanted)) {
            String nearest = NearestName.of(by, READINGS)
                    .map(n -> " Nearest: " + n + ".")
                    .orElse("");
            throw Refused.because(
                    "--by cannot be \"" + by + "\"", "Enter " + String.join(", ", READINGS) + "." + nearest);
        }
        return wanted;
    }
}
