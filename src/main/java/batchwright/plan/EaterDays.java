package batchwright.plan;

import java.util.List;

/** The days of one eater. */
public record EaterDays(Seat seat, List<Day> days) {
    public EaterDays {
        days = List.copyOf(days);
    }
}
