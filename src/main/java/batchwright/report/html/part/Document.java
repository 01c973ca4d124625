package batchwright.report.html.part;

/**
 * What stands around the content of a file of its own.
 *
 * @param css the program's own style sheet, which goes into the page unchanged
 * @param script the program's own script, in the same way; empty for none
 */
public record Document(String title, String css, String script) {
    public static final String GENERATOR = "Batchwright";

    /** @throws IllegalArgumentException when style sheet or script would end its own element */
    public Document {
        if (css.contains("</") || script.contains("</")) {
            throw new IllegalArgumentException("a style sheet or a script must not end its own element.");
        }
    }

    /** Without a script. */
    public Document(String title, String css) {
        this(title, css, "");
    }

    public String policy() {
        return ContentPolicy.allowingOnly(css, script);
    }
}
