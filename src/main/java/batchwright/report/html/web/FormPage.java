package batchwright.report.html.web;

import java.util.List;

/**
 * One form.
 *
 * @param action where it is sent
 * @param lead what it is for, in a sentence or two
 * @param shown what came of the form so far, a line each; may be empty
 * @param last whether all is right and it can be written, with a second button
 * @param buttons what the first and the second button say
 */
public record FormPage(
        Frame frame,
        String action,
        String lead,
        List<Field> fields,
        List<String> shown,
        boolean last,
        Buttons buttons) {
    /** The second one is only there when all is right. */
    public record Buttons(String first, String second) {}

    /** How a field is filled. */
    public enum Kind {
        WORDS,
        LINES,
        CHOICE
    }

    /** @param choices that there are, for a field of that kind */
    public record Field(String id, String label, String hint, String value, Kind kind, List<Choice> choices) {
        /** One line of text. */
        public static Field words(String id, String label, String hint, String value) {
            return new Field(id, label, hint, value, Kind.WORDS, List.of());
        }

        /** Several lines of text. */
        public static Field lines(String id, String label, String hint, String value) {
            return new Field(id, label, hint, value, Kind.LINES, List.of());
        }

        public static Field choice(String id, String label, String hint, String value, List<Choice> choices) {
            return new Field(id, label, hint, value, Kind.CHOICE, choices);
        }
    }

    /** @param says in full */
    public record Choice(String value, String says) {}
}
