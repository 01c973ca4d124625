package batchwright.needs.weighing;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * Water around the start of a period: weight is about 0.45 kg higher then (Kanellakis et al. 2023), rises before and falls fast after,
 * and no two cycles are alike (Robinson and Watson 1965). It is taken off the weight as a triangle, and such a weight counts less;
 * the days of the triangle are our choice. The coming period is foreseen a usual cycle after the last one that was logged.
 */
final class PeriodWater {
    private static final double PEAK_KG = 0.45;
    private static final double PEAK_DOUBT_KG = 0.3;
    private static final double RISES_DAYS = 6;
    private static final double FALLS_DAYS = 4;
    private static final int USUAL_CYCLE_DAYS = 28;

    private final List<LocalDate> starts;

    PeriodWater(List<WeighedDay> days) {
        List<LocalDate> logged = days.stream()
                .filter(day -> day.marks().contains(DayMark.PERIOD_STARTED))
                .map(WeighedDay::date)
                .toList();
        this.starts = logged.isEmpty()
                ? List.of()
                : java.util.stream.Stream.concat(
                                logged.stream(),
                                java.util.stream.Stream.of(
                                        logged.get(logged.size() - 1).plusDays(USUAL_CYCLE_DAYS)))
                        .toList();
    }

    double kg(LocalDate date) {
        return PEAK_KG * height(date);
    }

    double sdKg(LocalDate date) {
        return PEAK_DOUBT_KG * height(date);
    }

    /** From 0 to 1. */
    private double height(LocalDate date) {
        return starts.stream()
                .mapToDouble(start -> {
                    double days = ChronoUnit.DAYS.between(start, date);
                    return Math.max(0, 1 - Math.abs(days) / (days < 0 ? RISES_DAYS : FALLS_DAYS));
                })
                .max()
                .orElse(0);
    }
}
