package batchwright.needs.weighing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One day of a record.
 *
 * @param weightKg in the morning; empty when there was no weighing; more than 0
 */
public record WeighedDay(LocalDate date, OptionalDouble weightKg, DayIntake intake, Set<DayMark> marks) {
    public WeighedDay {
        if (weightKg.isPresent() && !(weightKg.getAsDouble() > 0 && Double.isFinite(weightKg.getAsDouble()))) {
            throw new IllegalArgumentException("weightKg (" + weightKg.getAsDouble() + ") must be more than 0.");
        }
        marks = Set.copyOf(marks);
    }

    static WeighedDay empty(LocalDate date) {
        return new WeighedDay(date, OptionalDouble.empty(), DayIntake.NOT_LOGGED, Set.of());
    }

    boolean hidesWeight() {
        return marks.stream().anyMatch(DayMark::hidesWeight);
    }

    /**
     * The same days with those between them that nothing is known of.
     *
     * @param days each date once, the earliest first
     */
    static List<WeighedDay> withoutGaps(List<WeighedDay> days) {
        List<WeighedDay> all = new ArrayList<>();
        for (WeighedDay day : days) {
            LocalDate last = all.isEmpty()
                    ? day.date().minusDays(1)
                    : all.get(all.size() - 1).date();
            if (!day.date().isAfter(last)) {
                throw new IllegalArgumentException("date (" + day.date() + ") must be after " + last + ".");
            }
            last.plusDays(1).datesUntil(day.date()).forEach(between -> all.add(empty(between)));
            all.add(day);
        }
        return List.copyOf(all);
    }
}
