package batchwright.cli;

import batchwright.app.InsightWanted;
import batchwright.app.Refused;
import batchwright.plan.TradeOff;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that ask for more than a plan. */
final class InsightOptions {
    @Option(
            names = "--why",
            description =
                    "Show what each rule, more protein and each item cost, and which foods just missed; takes up to"
                            + " --seconds more.")
    private boolean why;

    @Option(
            names = "--frontier",
            paramLabel = "WHAT",
            description = "Show the cost at other levels of protein or energy, or what a smaller or larger budget buys:"
                    + " protein, energy or budget; takes up to --seconds more.")
    private @Nullable String frontier;

    @Option(
            names = "--second-opinion",
            description =
                    "Have ojAlgo, another solver, work on the same plan; takes up to --seconds more. Exit 1 if it can show that"
                            + " the answer is wrong.")
    private boolean secondOpinion;

    /** What is found out is about one cooking session. */
    /** @param option that they do not go with */
    void refuse(String option) {
        if (isWanted()) {
            throw Refused.because(
                    "--why, --frontier and --second-opinion do not go with " + option,
                    "Leave out " + option + ", or these.");
        }
    }

    boolean isWanted() {
        return why || frontier != null || secondOpinion;
    }

    /** @throws Refused when the frontier is of something else */
    InsightWanted wanted() {
        return new InsightWanted(why, Optional.ofNullable(frontier).map(InsightOptions::tradeOff), secondOpinion);
    }

    private static TradeOff tradeOff(String text) {
        return Arrays.stream(TradeOff.values())
                .filter(t -> t.name().equals(text.toUpperCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() ->
                        Refused.because("--frontier cannot be \"" + text + "\"", "Enter protein, energy or budget."));
    }
}
