package batchwright.cli;

import batchwright.app.Refused;
import batchwright.report.export.PlanCalendar;
import batchwright.report.export.ShoppingCsv;
import batchwright.report.export.ShoppingNote;
import batchwright.report.export.WholePlan;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Whether a plan is also written into files for other programs. What a file holds is told by the ending of its name. */
final class ExportOptions {
    private static final String SHOPPING = "--shopping";
    private static final String CALENDAR = "--calendar";
    private static final String COOK_AT = "--cook-at";

    @Option(
            names = SHOPPING,
            paramLabel = "FILE",
            description =
                    "Also write the shopping list: FILE.csv for a spreadsheet, FILE.txt for a phone; may be given for both."
                            + " Replaces the file.")
    private List<String> shopping = List.of();

    @Option(
            names = CALENDAR,
            paramLabel = "FILE.ics",
            description = "Also write a calendar: when to cook, thaw, eat and eat up. Replaces the file.")
    private @Nullable String calendar;

    @Option(
            names = COOK_AT,
            paramLabel = "HH:MM",
            description = "With --calendar: when cooking starts; otherwise it stands at the whole day.")
    private @Nullable String cookAt;

    /** What is to be written, by name of the file. */
    private final Map<String, Function<WholePlan, String>> files = new LinkedHashMap<>();

    /**
     * Looks at all that can be looked at before there is a plan.
     *
     * @throws Refused when a file cannot be written, or its name does not tell what it shall hold
     */
    void check(Batchwright program) {
        for (String file : shopping) {
            if (ends(file, ".csv")) {
                files.put(file, ShoppingCsv::of);
            } else if (ends(file, ".txt")) {
                files.put(file, ShoppingNote::of);
            } else {
                throw ending(SHOPPING, file, ".csv or .txt", SHOPPING + " shopping.csv, or shopping.txt");
            }
        }
        Optional<LocalTime> at = Optional.ofNullable(cookAt).map(text -> new Given(COOK_AT, text).time());
        if (calendar == null && at.isPresent()) {
            throw Refused.because(COOK_AT + " is about a calendar", "Say where to: " + CALENDAR + " plan.ics.");
        }
        if (calendar != null) {
            if (!ends(calendar, ".ics")) {
                throw ending(CALENDAR, calendar, ".ics", CALENDAR + " plan.ics");
            }
            files.put(calendar, plan -> PlanCalendar.of(plan, at));
        }
        files.keySet().forEach(program::checkWritable);
    }

    private static boolean ends(String file, String ending) {
        return file.toLowerCase(Locale.ROOT).endsWith(ending);
    }

    private static Refused ending(String option, String file, String endings, String example) {
        return Refused.because(
                option + " knows no \"" + file + "\": it does not end in " + endings,
                "The ending says what it shall hold: " + example + ".");
    }

    /** A file that is there from before stays, and would be taken for this plan's: so it is said when nothing is written. */
    void write(Optional<WholePlan> plan, Batchwright program) {
        files.forEach((file, of) -> plan.ifPresentOrElse(
                found -> program.write(file, of.apply(found)),
                () -> program.complain("No plan: " + file + " is not written\n")));
    }
}
