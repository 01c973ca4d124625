package batchwright.needs.weighing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** A table of src/test/resources/published/weighing; lines with # say its source. */
public final class PublishedTable {
    private final List<String> head;
    private final List<List<String>> rows;

    public PublishedTable(String name) {
        try {
            List<List<String>> lines =
                    Files.readAllLines(Path.of("src/test/resources/published/weighing", name)).stream()
                            .filter(line -> !line.startsWith("#"))
                            .map(line -> Arrays.asList(line.split(",", -1)))
                            .toList();
            this.head = lines.get(0);
            this.rows = lines.subList(1, lines.size());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public int size() {
        return rows.size();
    }

    public String text(int row, String column) {
        return rows.get(row).get(head.indexOf(column));
    }

    public double number(int row, String column) {
        return Double.parseDouble(text(row, column));
    }

    public double[] column(String column) {
        return rows.stream()
                .mapToDouble(row -> Double.parseDouble(row.get(head.indexOf(column))))
                .toArray();
    }
}
