package batchwright.plan;

import batchwright.limit.DayTarget;
import batchwright.person.Eater;

/** An eater at the table: who, and what each day must hold. */
public record Seat(Eater eater, DayTarget target) {
    /** By name: a key of many tables, and going through all that is known of an eater takes long. */
    @Override
    public int hashCode() {
        return eater.id().hashCode();
    }
}
