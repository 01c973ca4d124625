package batchwright.report.needs;

import batchwright.needs.learning.Learned;
import batchwright.needs.weighing.Expenditure;
import batchwright.needs.weighing.KcalBand;
import batchwright.report.print.Dates;
import batchwright.report.print.Page;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/** Pictures of lines of text: the equation beside the weighings, and what was eaten week by week. */
final class LearnedBars {
    private static final int COLUMNS = 40;
    /** The last ones. */
    private static final int MOST_WEEKS = 16;

    private LearnedBars() {}

    /** Bands of 8 in 10 on one scale, the likeliest figure marked. */
    static void sideBySide(Expenditure seen, Page page) {
        Collection<KcalBand> bands = LearnedWords.bands(seen).values();
        double least = bands.stream().mapToDouble(KcalBand::least).min().orElseThrow();
        double most = bands.stream().mapToDouble(KcalBand::most).max().orElseThrow();
        LearnedWords.bands(seen).forEach((name, band) -> {
            var line = new StringBuilder(" ".repeat(COLUMNS));
            int from = place(band.least(), least, most);
            int to = place(band.most(), least, most);
            for (int i = from; i <= to; i++) {
                line.setCharAt(i, '-');
            }
            line.setCharAt(from, '[');
            line.setCharAt(to, ']');
            line.setCharAt(place(band.likely(), least, most), '*');
            page.line("  " + name);
            page.line("  " + line + "  " + KcalBand.rounded(band.likely()) + " (" + KcalBand.rounded(band.least())
                    + " to " + KcalBand.rounded(band.most()) + ")");
        });
    }

    /** # is what was weighed out, + other food, | the target. */
    static void eaten(Learned learned, Page page) {
        List<TrendWeek> all = TrendWeek.of(learned.seen());
        List<TrendWeek> weeks = all.subList(Math.max(0, all.size() - MOST_WEEKS), all.size());
        double target = learned.needs()
                .target()
                .map(day -> (double) day.energyAimKcal())
                .orElse(0.0);
        double most = Math.max(
                target, weeks.stream().mapToDouble(LearnedBars::kcal).max().orElse(0));
        for (TrendWeek week : weeks) {
            int planned = columns(week.plannedKcal().orElse(0), most);
            int eaten = columns(kcal(week), most);
            var line = new StringBuilder(
                    "#".repeat(planned) + "+".repeat(eaten - planned) + " ".repeat(COLUMNS + 1 - eaten));
            if (target > 0) {
                line.setCharAt(columns(target, most), '|');
            }
            String date = Dates.shortly(week.last().date(), learned.seen().lastDate());
            String figure = week.loggedDays() == 0 ? "not known" : Long.toString(Math.round(kcal(week)));
            page.line(String.format(Locale.ROOT, "  %-15s  %s  %s", date, line, figure));
        }
    }

    private static double kcal(TrendWeek week) {
        return week.plannedKcal().orElse(0) + week.unplannedKcal().orElse(0);
    }

    private static int columns(double kcal, double most) {
        return most <= 0 ? 0 : (int) Math.round(kcal / most * COLUMNS);
    }

    private static int place(double value, double least, double most) {
        return most <= least ? 0 : (int) Math.round((value - least) / (most - least) * (COLUMNS - 1));
    }
}
