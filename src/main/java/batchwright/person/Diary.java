package batchwright.person;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * Every hour of a day or of a week by activity. PAL = sum(hours x METs) / sum(hours), to 0.01: the factorial method of
 * FAO/WHO/UNU (Human energy requirements, Rome 2004, Table 5.1) with METs in the place of its physical activity ratios.
 *
 * <p>Both are multiples of rest with rest included, but not of the same rest: a ratio counts from the eater's own basal energy,
 * a MET from about 1 kcal per kg and hour, which most people and heavy ones above all do not reach. Here METs multiply the eater's
 * own resting energy.
 */
public record Diary(List<Entry> entries) implements PhysicalActivity {
    public static final int MINUTES_A_DAY = 24 * 60;
    public static final int MINUTES_A_WEEK = 7 * MINUTES_A_DAY;
    private static final int DECIMALS = 2;

    /** @param minutes in the day or the week of the diary, at least 1 */
    public record Entry(ListedActivity activity, int minutes) {
        /** MET-minutes. */
        BigDecimal cost() {
            return activity.met().multiply(BigDecimal.valueOf(minutes));
        }
    }

    public Diary {
        entries = List.copyOf(entries);
        int minutes = minutes(entries);
        if (minutes != MINUTES_A_DAY && minutes != MINUTES_A_WEEK) {
            throw new IllegalArgumentException("minutes (" + minutes + ") must be those of a day or of a week.");
        }
    }

    private static int minutes(List<Entry> entries) {
        return entries.stream().mapToInt(Entry::minutes).sum();
    }

    public boolean isWeek() {
        return minutes(entries) == MINUTES_A_WEEK;
    }

    @Override
    public double pal() {
        BigDecimal cost = entries.stream().map(Entry::cost).reduce(BigDecimal.ZERO, BigDecimal::add);
        return cost.divide(BigDecimal.valueOf(minutes(entries)), DECIMALS, RoundingMode.HALF_UP)
                .doubleValue();
    }

    @Override
    public String label() {
        return isWeek() ? "diary of a week" : "diary of a day";
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.diary(this);
    }
}
