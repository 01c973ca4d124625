package batchwright.plan;

import batchwright.person.DayTarget;
import batchwright.person.Eater;

/** An eater at the table: who, and what each day must hold. */
public record Seat(Eater eater, DayTarget target) {}
