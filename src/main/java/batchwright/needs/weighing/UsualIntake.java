package batchwright.needs.weighing;

import java.util.List;

/** What somebody usually eats: the mean of the last complete days that are logged. */
record UsualIntake(List<WeighedDay> days, double withoutAny) {
    private static final int LOOKS_BACK_DAYS = 14;

    /** In the days before this one, or on the first ones that are logged; what holds the weight when none is [kcal]. */
    double before(int day) {
        return mean(Math.max(0, day - LOOKS_BACK_DAYS), day);
    }

    /** In the last days of all. */
    double lately() {
        return before(days.size());
    }

    /** What the record of the last days may be wrong by all along [kcal]. */
    double latelyWrongBy() {
        return days.subList(Math.max(0, days.size() - LOOKS_BACK_DAYS), days.size()).stream()
                .mapToDouble(day -> WeightModel.allAlongKcal(day.intake(), lately()))
                .average()
                .orElse(0);
    }

    private double mean(int from, int to) {
        return days.subList(from, to).stream()
                .map(WeighedDay::intake)
                .filter(DayIntake::complete)
                .mapToDouble(DayIntake::kcal)
                .average()
                .orElseGet(this::meanOfAll);
    }

    private double meanOfAll() {
        return days.stream()
                .map(WeighedDay::intake)
                .filter(DayIntake::complete)
                .mapToDouble(DayIntake::kcal)
                .average()
                .orElse(withoutAny);
    }
}
