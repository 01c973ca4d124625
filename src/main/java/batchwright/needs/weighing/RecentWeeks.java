package batchwright.needs.weighing;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What the last weeks show, besides energy.
 *
 * @param percentAWeek change of the trend over the last three weeks, or as long as there are weighings; gain is positive
 * @param sdPercentAWeek its standard deviation
 * @param percentInAMonth change of the trend over the last 28 days, likewise
 * @param logging how well the last two weeks are recorded
 * @param loggingBefore the same of the two weeks before
 * @param settles until when water may still move, after an illness, a journey, creatine or another diet
 * @param moved days by which weight had moved further than weighings and food explain
 */
public record RecentWeeks(
        double percentAWeek,
        double sdPercentAWeek,
        double percentInAMonth,
        LoggingQuality logging,
        LoggingQuality loggingBefore,
        Optional<LocalDate> settles,
        List<LocalDate> moved) {
    private static final int RATE_DAYS = 21;
    private static final int MONTH_DAYS = 28;
    private static final int LOGGING_DAYS = 14;
    private static final double DAYS_A_WEEK = 7;
    private static final double PER_CENT = 100;

    static RecentWeeks of(List<WeighedDay> days, List<TrendDay> trend, List<LocalDate> moved) {
        int last = trend.size() - 1;
        TrendDay end = trend.get(last);
        TrendDay start = trend.get(Math.max(0, last - RATE_DAYS));
        double weeks = Math.max(1, Math.min(last, RATE_DAYS)) / DAYS_A_WEEK;
        return new RecentWeeks(
                PER_CENT * (end.trendKg() / start.trendKg() - 1) / weeks,
                PER_CENT * Math.hypot(end.trendSdKg(), start.trendSdKg()) / start.trendKg() / weeks,
                PER_CENT
                        * (end.trendKg()
                                        / trend.get(Math.max(0, last - MONTH_DAYS))
                                                .trendKg()
                                - 1),
                LoggingQuality.of(part(days, LOGGING_DAYS, 0)),
                LoggingQuality.of(part(days, 2 * LOGGING_DAYS, LOGGING_DAYS)),
                Settling.of(days),
                List.copyOf(moved));
    }

    private static List<WeighedDay> part(List<WeighedDay> days, int from, int to) {
        return days.subList(Math.max(0, days.size() - from), Math.max(0, days.size() - to));
    }

    /** Whether logging is worse than it was, where there is something to compare. */
    public boolean logsWorse() {
        return loggingBefore.loggedShare() > 0 && logging.isWorseThan(loggingBefore);
    }
}
