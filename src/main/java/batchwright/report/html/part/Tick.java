package batchwright.report.html.part;

/**
 * A thing with a box to tick. All but its name may be empty.
 *
 * @param amount that is bought or taken
 */
public record Tick(String name, String amount, String note, String money) {}
