package batchwright.cli;

import batchwright.app.NeedsOfEater;
import batchwright.app.Refused;
import batchwright.needs.Needs;
import batchwright.needs.ProjectionOfNeeds;
import batchwright.needs.projection.Projection;
import batchwright.report.ActivitiesJson;
import batchwright.report.ActivitiesText;
import batchwright.report.NeedsJson;
import batchwright.report.NeedsText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** needs EATER, needs --activities */
@Command(
        name = "needs",
        header = "How much should I eat: energy and protein a day, with every source.",
        customSynopsis = {"needs EATER [--weeks N] [OPTIONS]", "needs --activities [OPTIONS]"},
        footer = {
            "  java -jar target/batchwright.jar needs lifter-gaining",
            "  java -jar target/batchwright.jar needs desk-cutting --weeks 12"
        })
final class NeedsCommand implements Callable<Integer> {
    private static final int MOST_WEEKS = 104;

    /** Set by the command line's parser before {@link #call()}. */
    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Batchwright program;

    @Parameters(
            arity = "0..*",
            hideParamSyntax = true,
            paramLabel = "EATER",
            description = "A profile: its file, or its short name in profiles/.")
    private List<String> eaters = new ArrayList<>();

    @Option(
            names = "--weeks",
            paramLabel = "N",
            description = "Also where weight, fat and lean mass go in N weeks of the target, 1 to 104.")
    private @Nullable String weeks;

    @Option(
            names = "--activities",
            description =
                    "List what a profile may say of activity: levels, multipliers, and the activities of a diary.")
    private boolean activities;

    @Override
    public Integer call() {
        if (activities) {
            return listActivities();
        }
        if (eaters.size() != 1) {
            throw Refused.because(
                    eaters.isEmpty() ? "no eater is named" : "needs answers for one eater at a time",
                    "Name one profile: needs lifter-gaining.");
        }
        Needs needs = NeedsOfEater.answer(program.workspace(), eaters.get(0));
        if (weeks == null) {
            return program.answer(program.json ? NeedsJson.of(needs) : NeedsText.of(needs));
        }
        int ahead = new Given("--weeks", weeks).whole(1, MOST_WEEKS, "weeks");
        Optional<Projection> projection = ProjectionOfNeeds.of(needs, ahead);
        return program.answer(program.json ? NeedsJson.of(needs, projection) : NeedsText.of(needs, projection));
    }

    private int listActivities() {
        if (!eaters.isEmpty() || weeks != null) {
            throw Refused.because(
                    "--activities stands with " + (eaters.isEmpty() ? "--weeks" : "an eater"),
                    "Write it alone, it is the same for all: needs --activities.");
        }
        return program.answer(program.json ? ActivitiesJson.list() : ActivitiesText.list());
    }
}
