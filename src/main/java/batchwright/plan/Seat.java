package batchwright.plan;

import batchwright.limit.DayTarget;
import batchwright.person.Eater;

/** An eater at the table: who, and what each day must hold. */
public record Seat(Eater eater, DayTarget target) {}
