package batchwright.report.html.part;

/**
 * What stands around the content of a file of its own.
 *
 * @param css the program's own style sheet, which goes into the page unchanged
 */
public record Document(String title, String css) {
    public static final String GENERATOR = "Batchwright";

    /** @throws IllegalArgumentException when the style sheet would end its own element */
    public Document {
        if (css.contains("</")) {
            throw new IllegalArgumentException("a style sheet must not end its own element.");
        }
    }

    public String policy() {
        return ContentPolicy.allowingOnly(css);
    }
}
