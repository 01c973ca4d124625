package batchwright.text;

/**
 * A place in a file.
 *
 * @param line starting at 1; 0 for the file as a whole
 * @param column starting at 1
 * @param length of the marked text, at least 1
 */
public record Span(SourceFile file, int line, int column, int length) {
    public static Span whole(SourceFile file) {
        return new Span(file, 0, 1, 1);
    }
}
