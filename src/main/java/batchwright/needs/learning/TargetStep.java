package batchwright.needs.learning;

import java.time.LocalDate;

/**
 * A figure that was adopted.
 *
 * @param holdsKcal energy a day that holds the weight, as it was taken from that day on
 */
public record TargetStep(LocalDate date, double holdsKcal) {}
