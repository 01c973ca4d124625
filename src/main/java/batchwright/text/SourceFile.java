package batchwright.text;

import java.util.List;

/**
 * A text file as its user wrote it.
 *
 * @param path as shown to the user
 * @param lines without line ends
 */
public record SourceFile(String path, List<String> lines) {
    public SourceFile {
        lines = List.copyOf(lines);
    }

    public static SourceFile of(String path, String content) {
        return new SourceFile(path, content.lines().toList());
    }

    /** Line by its number, starting at 1; empty beyond the end. */
    public String line(int number) {
        return number >= 1 && number <= lines.size() ? lines.get(number - 1) : "";
    }
}
