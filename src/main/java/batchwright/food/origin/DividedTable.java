package batchwright.food.origin;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** A table beside some class whose columns are divided by |. Lines beginning with # are notes; the first other line names the columns. */
public final class DividedTable {
    private DividedTable() {}

    /** @return cells row by row, the row of names left out */
    public static List<List<String>> rows(Class<?> beside, String name, int columns) {
        try (InputStream in = beside.getResourceAsStream(name)) {
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
        List<String> cells = Stream.of(line.split("\\|", -1)).map(String::strip).toList();
        if (cells.size() != columns) {
            throw new IllegalStateException("cells (" + cells.size() + ") must be " + columns + " in the line \"" + line
                    + "\" of " + name + ".");
        }
        return cells;
    }

    /** With commas between. */
    public static List<String> words(String cell) {
        return Stream.of(cell.split(",", -1))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
