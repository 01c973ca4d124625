package batchwright.report.needs;

import batchwright.needs.learning.Learned;
import batchwright.needs.weighing.TrendDay;
import java.time.temporal.ChronoUnit;

/**
 * Where weight should have gone by the goal: a straight line from the first day of the trend.
 *
 * @param kgAWeek gain is positive
 */
public record TargetCourse(TrendDay start, double kgAWeek) {
    private static final double DAYS_A_WEEK = 7;

    public static TargetCourse of(Learned learned) {
        return new TargetCourse(
                learned.seen().trend().get(0),
                learned.needs().goal().map(goal -> goal.change().kgAWeek()).orElse(0.0));
    }

    public double kg(TrendDay day) {
        return start.trendKg() + kgAWeek * ChronoUnit.DAYS.between(start.date(), day.date()) / DAYS_A_WEEK;
    }
}
