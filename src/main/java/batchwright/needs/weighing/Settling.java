package batchwright.needs.weighing;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.stat.StatUtils;

/** Water moves for some days after an illness, a journey, creatine, or another diet: what weight shows then is little energy. */
final class Settling {
    /** Water has a time constant of 3-5 days; after 10 a tenth of it is left. */
    private static final int DAYS = 10;

    private static final double CHANGE_KCAL = 300;
    private static final int LOOKS_BACK = 14;
    private static final int LEAST_LOGGED = 5;
    /** Of the standard error: intake of one person varies much from day to day. */
    private static final double CLEARLY = 3;

    private Settling() {}

    /** The last day of it, when that has not passed by the last day of the record. */
    static Optional<LocalDate> of(List<WeighedDay> days) {
        for (int i = days.size() - 1; i >= Math.max(0, days.size() - DAYS); i--) {
            boolean moves = days.get(i).marks().stream().anyMatch(mark -> mark != DayMark.PERIOD_STARTED);
            if (moves || dietChanged(days, i)) {
                return Optional.of(days.get(i).date().plusDays(DAYS));
            }
        }
        return Optional.empty();
    }

    private static boolean dietChanged(List<WeighedDay> days, int at) {
        double[] before = kcal(days.subList(Math.max(0, at - LOOKS_BACK), at));
        double[] after = kcal(days.subList(at, days.size()));
        if (before.length < LEAST_LOGGED || after.length < LEAST_LOGGED) {
            return false;
        }
        double change = Math.abs(StatUtils.mean(after) - StatUtils.mean(before));
        double error = Math.sqrt(StatUtils.variance(before) / before.length + StatUtils.variance(after) / after.length);
        return change > CHANGE_KCAL && change > CLEARLY * error;
    }

    private static double[] kcal(List<WeighedDay> days) {
        return days.stream()
                .map(WeighedDay::intake)
                .filter(DayIntake::complete)
                .mapToDouble(DayIntake::kcal)
                .toArray();
    }
}
