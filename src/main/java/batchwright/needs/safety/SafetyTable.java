package batchwright.needs.safety;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A table of this package: lines beginning with # are notes, the first other line names the columns, the last column takes commas. */
final class SafetyTable {
    private SafetyTable() {}

    /** @return cells row by row, the row of names left out */
    static List<List<String>> rows(String name, int columns) {
        try (InputStream in = SafetyTable.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is not inside the program.");
            }
            return new String(in.readAllBytes(), StandardCharsets.US_ASCII)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> List.of(line.split(",", columns)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
