package batchwright.report.html.web;

/**
 * Asks before a phone is paired: something that only looks at an address must not use its key up.
 *
 * @param key as it came
 */
public record PairPage(String key) {}
