package batchwright.report;

import java.util.ArrayList;
import java.util.List;

/** A page of text for the terminal, at most {@link #WIDTH} columns wide unless a single word is wider. */
final class Page {
    static final int WIDTH = 80;
    private final StringBuilder out = new StringBuilder();

    /** A line as it is. What a terminal would obey becomes a question mark: names come from files. */
    Page line(String text) {
        String printable = text.replaceAll("\\p{Cntrl}", "?");
        out.append(printable.stripTrailing()).append('\n');
        return this;
    }

    /** An empty line, never two and never the first. */
    Page gap() {
        if (out.length() > 0 && !out.toString().endsWith("\n\n")) {
            out.append('\n');
        }
        return this;
    }

    Page heading(String text) {
        return gap().line(text);
    }

    Page paragraph(String text) {
        return paragraph("", "", text);
    }

    /** Wrapped text: its first line after one indent, the others after another. */
    Page paragraph(String first, String others, String text) {
        List<String> lines = wrap(text, WIDTH - Math.max(first.length(), others.length()));
        for (int i = 0; i < lines.size(); i++) {
            line((i == 0 ? first : others) + lines.get(i));
        }
        return this;
    }

    Page item(String text) {
        return paragraph("  - ", "    ", text);
    }

    Page table(TextTable table) {
        table.lines().forEach(this::line);
        return this;
    }

    /** Breaks at blanks; a word wider than the width keeps a line of its own. */
    static List<String> wrap(String text, int width) {
        List<String> lines = new ArrayList<>();
        var line = new StringBuilder();
        for (String word : text.strip().split("\\s+", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
