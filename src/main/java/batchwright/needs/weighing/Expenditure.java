package batchwright.needs.weighing;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What weighings and recorded food say of one person's expenditure. Two figures, which differ while weight changes: what is burnt now,
 * and what would hold the weight.
 *
 * @param now expenditure at the present intake
 * @param holds intake that would hold the present weight
 * @param trend one day each, from the first day of the record to the last
 * @param leftOut weighings that are not used, and why
 */
public record Expenditure(
        Prior prior,
        KcalBand now,
        KcalBand holds,
        RecordSize evidence,
        List<TrendDay> trend,
        List<UnusedWeighing> leftOut,
        RecentWeeks recent) {
    /** Only then it is called measured: two reference measurements of one person differ as much (128 kcal, CALERIE). */
    private static final double MEASURED_SD_KCAL = 125;

    /** A record that falls shorter of what weight says is worth a word; our choice. */
    private static final double SHORT_PERCENT = 8;

    private static final double PER_CENT = 100;

    public Expenditure {
        trend = List.copyOf(trend);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * Empty when nothing was weighed.
     *
     * @param days each date once, the earliest first; days between that are not there count as not logged
     */
    public static Optional<Expenditure> of(Prior prior, List<WeighedDay> days) {
        return days.stream().anyMatch(day -> day.weightKg().isPresent())
                ? Optional.of(new Follow(prior, WeighedDay.withoutGaps(days)).expenditure())
                : Optional.empty();
    }

    public LocalDate lastDate() {
        return trend.get(trend.size() - 1).date();
    }

    /** Weight on the last day, without the noise of weighing [kg]. */
    public double weightKg() {
        return trend.get(trend.size() - 1).trendKg();
    }

    /** The weighing of a day, when there is one and it is used [kg]. */
    public OptionalDouble usedKg(TrendDay day) {
        return leftOut.stream().anyMatch(left -> left.date().equals(day.date()))
                ? OptionalDouble.empty()
                : day.weighedKg();
    }

    /** Whether it stands on its own, and not mostly on the equation. */
    public boolean isMeasured() {
        return evidence.isEnough() && holds.sd() <= MEASURED_SD_KCAL;
    }

    /**
     * How far the record falls short of what the equation and the weight say together [% of that]; empty when that is little or may be
     * chance. The record may be short, or this person may need less than the equation says: weight alone cannot tell.
     */
    public OptionalDouble recordShortPercent() {
        double missing = prior.kcal() - holds.likely();
        double eaten = trend.stream()
                .map(TrendDay::intake)
                .filter(DayIntake::complete)
                .mapToDouble(DayIntake::kcal)
                .average()
                .orElse(0);
        double percent = PER_CENT * missing / (eaten + missing);
        return evidence.isEnough() && missing > holds.sd() && percent >= SHORT_PERCENT
                ? OptionalDouble.of(percent)
                : OptionalDouble.empty();
    }
}
