package batchwright.report.needs;

import batchwright.needs.weighing.DayIntake;
import batchwright.needs.weighing.Expenditure;
import batchwright.needs.weighing.TrendDay;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * A row of the table beside a picture: seven days, the first week perhaps fewer.
 *
 * @param last its last day
 * @param weighedKg mean of the weighings that are used
 * @param plannedKcal mean of the days that are recorded completely, weighed out by a plan
 * @param unplannedKcal the same of all other food
 * @param loggedDays recorded completely
 */
public record TrendWeek(
        TrendDay last,
        OptionalDouble weighedKg,
        OptionalDouble plannedKcal,
        OptionalDouble unplannedKcal,
        int loggedDays) {
    private static final int DAYS = 7;

    /** Whole weeks back from the last day, the earliest first. */
    public static List<TrendWeek> of(Expenditure seen) {
        List<TrendDay> trend = seen.trend();
        List<TrendWeek> weeks = new ArrayList<>();
        for (int end = trend.size(); end > 0; end -= DAYS) {
            weeks.add(0, week(seen, trend.subList(Math.max(0, end - DAYS), end)));
        }
        return List.copyOf(weeks);
    }

    private static TrendWeek week(Expenditure seen, List<TrendDay> days) {
        List<DayIntake> complete =
                days.stream().map(TrendDay::intake).filter(DayIntake::complete).toList();
        return new TrendWeek(
                days.get(days.size() - 1),
                days.stream().flatMapToDouble(day -> seen.usedKg(day).stream()).average(),
                mean(complete, DayIntake::plannedKcal),
                mean(complete, DayIntake::unplannedKcal),
                complete.size());
    }

    private static OptionalDouble mean(List<DayIntake> days, ToDoubleFunction<DayIntake> kcal) {
        return days.stream().mapToDouble(kcal).average();
    }
}
