package batchwright.cli;

import batchwright.app.Refused;
import batchwright.report.cooking.KitchenClock;
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
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Whether a plan is also written into files for other programs. The ending of its name says what a file holds. */
final class ExportOptions {
    private static final String SHOPPING = "--shopping";
    private static final String CALENDAR = "--calendar";
    private static final String COOK_AT = "--cook-at";

    @Option(
            names = SHOPPING,
            paramLabel = "FILE",
            description =
                    "Also write the shopping list: FILE.csv for a spreadsheet, FILE.txt for a phone; may be given for both."
                            + " Replaces an older one.")
    private List<String> shopping = List.of();

    @Option(
            names = CALENDAR,
            paramLabel = "FILE.ics",
            description = "Also write a calendar: when to cook, thaw, eat and eat up. Replaces an older one.")
    private @Nullable String calendar;

    @Option(
            names = COOK_AT,
            paramLabel = "HH:MM",
            description =
                    "When cooking starts: then its steps have times of day, and in a calendar it does not take the whole day.")
    private @Nullable String cookAt;

    /** What is to be written, by name of the file. */
    private final Map<String, Kind> kinds = new LinkedHashMap<>();

    /** @param isIn whether a file with this beginning is of this kind */
    private record Kind(Function<WholePlan, String> of, Predicate<String> isIn) {}

    /**
     * Looks at all that can be looked at before there is a plan.
     *
     * @throws Refused when a file cannot be written, or its name does not tell what it holds
     */
    void check(FilesBeside files) {
        for (String file : shopping) {
            if (ends(file, ".csv")) {
                kinds.put(file, new Kind(ShoppingCsv::of, ShoppingCsv::isIn));
            } else if (ends(file, ".txt")) {
                kinds.put(file, new Kind(ShoppingNote::of, ShoppingNote::isIn));
            } else {
                throw ending(SHOPPING, file, ".csv or .txt", SHOPPING + " shopping.csv, or shopping.txt");
            }
        }
        Optional<LocalTime> at = clock().start();
        if (calendar != null) {
            if (!ends(calendar, ".ics")) {
                throw ending(CALENDAR, calendar, ".ics", CALENDAR + " plan.ics");
            }
            kinds.put(calendar, new Kind(plan -> PlanCalendar.of(plan, at), PlanCalendar::isIn));
        }
        kinds.forEach((file, kind) -> files.add(file, kind.isIn()));
    }

    /** How the minutes of cooking are written. */
    KitchenClock clock() {
        return new KitchenClock(Optional.ofNullable(cookAt).map(text -> new Given(COOK_AT, text).time()));
    }

    private static boolean ends(String file, String ending) {
        return file.toLowerCase(Locale.ROOT).endsWith(ending);
    }

    private static Refused ending(String option, String file, String endings, String example) {
        return Refused.because(
                option + " knows no \"" + file + "\": it does not end in " + endings,
                "The ending says what the file holds: " + example + ".");
    }

    /** Without a plan there is nothing to shop for or be reminded of. */
    void write(Optional<WholePlan> plan, FilesBeside files) {
        kinds.forEach((file, kind) -> plan.ifPresentOrElse(
                found -> files.write(file, kind.of().apply(found), ""), () -> files.leaveOut(file)));
    }
}
