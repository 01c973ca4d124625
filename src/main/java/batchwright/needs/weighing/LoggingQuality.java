package batchwright.needs.weighing;

import java.util.List;

/**
 * How well food is recorded.
 *
 * @param loggedShare of days that are complete, from 0 to 1
 * @param unplannedShare of the energy of complete days that no plan weighed out, from 0 to 1
 */
public record LoggingQuality(double loggedShare, double unplannedShare) {
    /** What is told apart from chance; our choice. */
    private static final double CLEARLY = 0.15;

    static LoggingQuality of(List<WeighedDay> days) {
        List<DayIntake> complete = days.stream()
                .map(WeighedDay::intake)
                .filter(DayIntake::complete)
                .toList();
        double all = complete.stream().mapToDouble(DayIntake::kcal).sum();
        double unplanned =
                complete.stream().mapToDouble(DayIntake::unplannedKcal).sum();
        return new LoggingQuality(
                days.isEmpty() ? 0 : (double) complete.size() / days.size(), all == 0 ? 0 : unplanned / all);
    }

    /** Whether fewer days are logged, or more is eaten that nobody weighed out, than at another time. */
    public boolean isWorseThan(LoggingQuality before) {
        return loggedShare < before.loggedShare - CLEARLY || unplannedShare > before.unplannedShare + CLEARLY;
    }
}
