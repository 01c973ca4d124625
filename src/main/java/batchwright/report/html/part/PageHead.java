package batchwright.report.html.part;

/**
 * The head of a page: what it is, and below it whose plan it belongs to, so that a lone sheet of paper tells.
 *
 * @param id by which it is linked to
 * @param look a class of the style sheet
 * @param whose may be empty, and so may {@code cookingDay}, which goes on after it
 * @param says below all this; may be empty
 */
public record PageHead(String id, String look, String heading, String whose, String cookingDay, String says) {}
