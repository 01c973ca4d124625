package batchwright.person;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A table beside this package whose columns are divided by |. Lines beginning with # are notes; the first other line names the columns. */
final class PipeTable {
    private PipeTable() {}

    /** @return cells row by row, the row of names left out */
    static List<List<String>> rows(String name, int columns) {
        try (InputStream in = PipeTable.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is not inside the program.");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> cells(name, line, columns))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> cells(String name, String line, int columns) {
        List<String> cells = List.of(line.split("\\|", -1));
        if (cells.size() != columns) {
            throw new IllegalStateException("cells (" + cells.size() + ") must be " + columns + " in the line \"" + line
                    + "\" of " + name + ".");
        }
        return cells;
    }
}
