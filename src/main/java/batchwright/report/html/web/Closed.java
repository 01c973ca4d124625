package batchwright.report.html.web;

/**
 * A page in place of the one that was asked for.
 *
 * @param wrong why it is not shown
 * @param cure what can be done; may be empty
 */
public record Closed(String wrong, String cure) {}
