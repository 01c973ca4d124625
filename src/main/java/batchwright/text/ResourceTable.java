package batchwright.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A table among the program's own resources, beside the class that reads it. Lines that begin with # are notes; the first other line
 * names the columns.
 */
public final class ResourceTable {
    private ResourceTable() {}

    /**
     * Columns divided by |.
     *
     * @return cells row by row, the row of names left out
     */
    public static List<List<String>> divided(Class<?> beside, String name, int columns) {
        return rows(beside, name, "|", -1, columns);
    }

    /**
     * Columns divided by commas; the last one may hold commas of its own.
     *
     * @return cells row by row, the row of names left out
     */
    public static List<List<String>> withCommas(Class<?> beside, String name, int columns) {
        return rows(beside, name, ",", columns, columns);
    }

    /** The words of a cell, which have commas between them. */
    public static List<String> words(String cell) {
        return Stream.of(cell.split(",", -1))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private static List<List<String>> rows(Class<?> beside, String name, String divider, int most, int columns) {
        try (InputStream in = beside.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is not inside the program.");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> cells(name, line, line.split(Pattern.quote(divider), most), columns))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> cells(String name, String line, String[] parts, int columns) {
        if (parts.length != columns) {
            throw new IllegalStateException("cells (" + parts.length + ") must be " + columns + " in the line \"" + line
                    + "\" of " + name + ".");
        }
        return Stream.of(parts).map(String::strip).toList();
    }
}
