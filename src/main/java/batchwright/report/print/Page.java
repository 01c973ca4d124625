package batchwright.report.print;

import batchwright.text.Echo;
import java.util.ArrayList;
import java.util.List;

/** A page of text, at most so many columns wide unless a single word is wider. */
public final class Page {
    /** Of a terminal, when nothing else is known. */
    public static final int WIDTH = 80;

    /** Longer lines of running text are hard to read, however wide the terminal is: common practice. */
    public static final int PROSE = 100;

    private final int width;
    private final StringBuilder out = new StringBuilder();

    public Page() {
        this(WIDTH);
    }

    /** @param width in columns */
    public Page(int width) {
        this.width = width;
    }

    public int width() {
        return width;
    }

    /** A line as it is, except for what a terminal would obey: names come from files. */
    public Page line(String text) {
        out.append(Echo.line(text).stripTrailing()).append('\n');
        return this;
    }

    /** An empty line, never two and never the first. */
    public Page gap() {
        if (out.length() > 0 && !out.toString().endsWith("\n\n")) {
            out.append('\n');
        }
        return this;
    }

    public Page heading(String text) {
        return gap().line(text);
    }

    public Page paragraph(String text) {
        return paragraph("", "", text);
    }

    /** Wrapped text: its first line after one indent, the others after another. */
    public Page paragraph(String first, String others, String text) {
        List<String> lines = wrap(text, Math.min(width, PROSE) - Math.max(first.length(), others.length()));
        for (int i = 0; i < lines.size(); i++) {
            line((i == 0 ? first : others) + lines.get(i));
        }
        return this;
    }

    public Page item(String text) {
        return paragraph("  - ", "    ", text);
    }

    public Page table(TextTable table) {
        table.lines(width).forEach(this::line);
        return this;
    }

    /** Two blocks side by side, the right one from this column on. */
    public Page beside(Page left, int column, Page right) {
        List<String> first = left.out.toString().lines().toList();
        List<String> second = right.out.toString().lines().toList();
        for (int i = 0; i < Math.max(first.size(), second.size()); i++) {
            String here = i < first.size() ? first.get(i) : "";
            line(here + " ".repeat(Math.max(1, column - here.length())) + (i < second.size() ? second.get(i) : ""));
        }
        return this;
    }

    /** Columns of its widest line so far. */
    public int widest() {
        return out.toString().lines().mapToInt(String::length).max().orElse(0);
    }

    /** Breaks at blanks; a word wider than the width keeps a line of its own. */
    public static List<String> wrap(String text, int width) {
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
