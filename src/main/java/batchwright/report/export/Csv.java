package batchwright.report.export;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A table as in RFC 4180: a header line, lines that end with CR LF, commas, and quotes where a cell needs them.
 *
 * <p>A text that a spreadsheet would take for a formula gets an apostrophe before it, as OWASP advises ("CSV Injection"):
 * names come from files, and files from others.
 */
final class Csv {
    private static final String END = "\r\n";
    private static final Pattern TO_BE_QUOTED = Pattern.compile("[\",\r\n]|^\\s|\\s$");
    /** Also the full-width signs, which some spreadsheets take for the plain ones. */
    private static final Pattern FORMULA = Pattern.compile("\\A[=+\\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]");

    private final int columns;
    private final StringBuilder out = new StringBuilder();

    /** @param head names of columns */
    Csv(String... head) {
        this.columns = head.length;
        row(Arrays.asList(head));
    }

    /** Cells as they are to be read: {@link #text} turns a name into one. */
    Csv row(String... cells) {
        row(Arrays.asList(cells));
        return this;
    }

    private void row(List<String> cells) {
        if (cells.size() != columns) {
            throw new IllegalArgumentException("cells (" + cells.size() + ") must be as many as columns.");
        }
        out.append(cells.stream().map(Csv::quoted).collect(Collectors.joining(",")))
                .append(END);
    }

    /** Words that must stay words in a spreadsheet. */
    static String text(String words) {
        return FORMULA.matcher(words).find() ? "'" + words : words;
    }

    private static String quoted(String cell) {
        return TO_BE_QUOTED.matcher(cell).find() ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
