package batchwright.book;

/**
 * A line that takes more than there was.
 *
 * @param entry which
 * @param says what is missing, one sentence without a full stop
 */
public record Overdrawn(Entry entry, String says) {}
