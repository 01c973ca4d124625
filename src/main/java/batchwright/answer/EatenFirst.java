package batchwright.answer;

import batchwright.book.BoxesLeft;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

/**
 * Whole days of containers that are left from before. They are eaten before anything new is cooked, so that a plan begins after them.
 *
 * @param day the first of them
 * @param days how many
 * @param eatersDays what each eater has on them
 * @param over containers that make no whole day
 * @param past containers that were past their last day before the first of these
 */
public record EatenFirst(
        LocalDate day, int days, List<OneDay> eatersDays, List<BoxesLeft.Lot> over, List<BoxesLeft.Lot> past) {
    public EatenFirst {
        eatersDays = List.copyOf(eatersDays);
        over = List.copyOf(over);
        past = List.copyOf(past);
    }

    /** Nothing is left. */
    public static EatenFirst none(LocalDate day) {
        return new EatenFirst(day, 0, List.of(), List.of(), List.of());
    }

    /** Whether there is nothing to say of it. */
    public boolean isNone() {
        return days == 0 && over.isEmpty() && past.isEmpty();
    }

    /** The day on which cooking starts. */
    public LocalDate next() {
        return day.plusDays(days);
    }

    /**
     * One eater's day.
     *
     * @param boxes some of each lot
     * @param kcal of containers and what is always eaten; what a container does not say counts as nothing
     * @param shortKcal what is missing to the aim, at least 0
     * @param shortProteinG what is missing to the floor, at least 0
     */
    public record OneDay(
            LocalDate day,
            String eater,
            List<BoxesLeft.Lot> boxes,
            BigDecimal kcal,
            BigDecimal shortKcal,
            BigDecimal shortProteinG) {
        public OneDay {
            boxes = List.copyOf(boxes);
        }
    }
}
