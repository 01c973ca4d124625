package batchwright.report.needs;

import batchwright.needs.learning.TargetAdvice;
import batchwright.needs.weighing.DayIntake;
import batchwright.needs.weighing.Expenditure;
import batchwright.needs.weighing.KcalBand;
import batchwright.needs.weighing.RecordSize;
import batchwright.needs.weighing.TrendDay;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The sentences about what weighings say; the same in a terminal and on a page. */
public final class LearnedWords {
    private LearnedWords() {}

    /** From what it is known. */
    public static String evidence(Expenditure seen) {
        RecordSize evidence = seen.evidence();
        return Show.count(evidence.days(), "day", "days") + ", "
                + Show.count(evidence.weighings(), "weighing", "weighings") + " used, food of "
                + Show.count(evidence.loggedDays(), "day", "days") + " recorded completely.";
    }

    /** The two figures and the equation. */
    public static List<String> figures(Expenditure seen) {
        String equation = "By the equation " + band(seen.prior().band());
        if (!seen.evidence().isEnough()) {
            return List.of(equation + " would hold your weight. Weighings say more after " + RecordSize.LEAST_DAYS
                    + " days with "
                    + RecordSize.LEAST_WEIGHINGS + " weighings and " + RecordSize.LEAST_LOGGED_DAYS
                    + " days of complete records.");
        }
        return List.of(
                "You burn " + band(seen.now()) + " at what you eat now.",
                Show.capital(band(seen.holds())) + " would hold your weight of " + Show.oneDecimal(seen.weightKg())
                        + " kg. " + equation + ".",
                seen.isMeasured()
                        ? "Both are measured figures, in the kcal of your own record; 8 of 10 such bands hold the truth."
                        : "Both still lean on the equation; more weeks narrow them. 8 of 10 such bands hold the truth.");
    }

    /** "about 2500 kcal a day (2350 to 2650)" */
    static String band(KcalBand band) {
        return "about " + KcalBand.rounded(band.likely()) + " kcal a day (" + KcalBand.rounded(band.least()) + " to "
                + KcalBand.rounded(band.most()) + ")";
    }

    /** What becomes of the target. */
    public static List<String> advice(TargetAdvice advice) {
        if (advice instanceof TargetAdvice.Offer offer) {
            String again = offer.secondCut()
                    ? "It would be the second step down in a row: look first whether everything you eat is in the record."
                    : "";
            return Stream.of(
                            "A step is offered: " + offer.toKcal() + " kcal a day in place of " + offer.fromKcal()
                                    + ", if you want. Nothing changes until you adopt it.",
                            again)
                    .filter(says -> !says.isEmpty())
                    .toList();
        }
        if (advice instanceof TargetAdvice.Wait wait) {
            return List.of("The target stays. " + wait.says()
                    + wait.until()
                            .map(day -> " Look again on " + Dates.shortly(day) + ".")
                            .orElse(""));
        }
        return List.of();
    }

    /** Weight over the weeks, in a sentence. */
    public static String weight(Expenditure seen) {
        double percent = seen.recent().percentAWeek();
        double kg = percent / 100 * seen.weightKg();
        String change = Math.abs(percent) <= seen.recent().sdPercentAWeek()
                ? "no change that can be told from noise"
                : (kg < 0 ? "falling" : "rising") + " by about " + Show.twoDecimals(Math.abs(kg)) + " kg a week";
        return "Weight without the noise of weighing: " + Show.oneDecimal(seen.weightKg()) + " kg; lately " + change
                + ".";
    }

    /** The equation, and what weighings make of it, by what stands beside them. */
    public static Map<String, KcalBand> bands(Expenditure seen) {
        Map<String, KcalBand> bands = new LinkedHashMap<>();
        bands.put("holds your weight, by the equation", seen.prior().band());
        bands.put("holds your weight, by your weighings", seen.holds());
        bands.put("burnt now, by your weighings", seen.now());
        return bands;
    }

    /** Both in a sentence. */
    public static String sideBySide(Expenditure seen) {
        return "The equation alone says " + band(seen.prior().band())
                + " would hold your weight; with your weighings it is " + band(seen.holds()) + ".";
    }

    /** Food over the weeks, in a sentence. */
    public static String eaten(Expenditure seen) {
        List<DayIntake> days = seen.trend().stream()
                .map(TrendDay::intake)
                .filter(DayIntake::complete)
                .toList();
        double planned =
                days.stream().mapToDouble(DayIntake::plannedKcal).average().orElse(0);
        double other =
                days.stream().mapToDouble(DayIntake::unplannedKcal).average().orElse(0);
        return "Eaten on the " + Show.count(days.size(), "day that is", "days that are") + " recorded completely: "
                + Show.whole(planned + other) + " kcal on average, " + Show.whole(other)
                + " of it not weighed out here.";
    }

    /** Energy over the weeks, in a sentence. */
    public static String holding(Expenditure seen) {
        return "What holds your weight, as it was known each day: from "
                + band(seen.prior().band()) + " by the equation to " + band(seen.holds()) + ".";
    }
}
