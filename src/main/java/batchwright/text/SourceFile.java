package batchwright.text;

import java.util.List;

/**
 * A text file as its user wrote it.
 *
 * @param path as shown to the user
 * @param lines without line ends
 * @param ended whether the last line has an end; one that has none may be cut off
 */
public record SourceFile(String path, List<String> lines, boolean ended) {
    public SourceFile {
        lines = List.copyOf(lines);
    }

    public SourceFile(String path, List<String> lines) {
        this(path, lines, true);
    }

    /** From text with any of the usual line ends. */
    public static SourceFile of(String path, String content) {
        boolean ended = content.isEmpty() || content.endsWith("\n") || content.endsWith("\r");
        return new SourceFile(path, content.lines().toList(), ended);
    }

    /** A place in this file; one that lies beyond the end of its line is moved to that end. */
    public Span span(int line, int column, int length) {
        int inside = Math.max(1, Math.min(column, line(line).length() + 1));
        return new Span(this, line, inside, Math.max(1, length));
    }

    /** Line by its number, starting at 1; empty beyond the end. */
    public String line(int number) {
        return number >= 1 && number <= lines.size() ? lines.get(number - 1) : "";
    }
}
