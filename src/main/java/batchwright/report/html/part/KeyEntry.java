package batchwright.report.html.part;

/**
 * What a letter and a colour of a picture stand for.
 *
 * @param note follows the name; may be empty
 */
public record KeyEntry(Series series, String name, String note) {}
