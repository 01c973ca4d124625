package batchwright.report.html.part;

/** A figure that stands out at the top of the report, and below it what goes with it. */
public record Tile(String what, String figure, String note) {}
