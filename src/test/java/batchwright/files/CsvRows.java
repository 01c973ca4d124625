package batchwright.files;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Tables as plain text, not read by the program: the catalogue's and the published ones that it is compared with. */
public final class CsvRows {
    private CsvRows() {}

    public static List<CSVRecord> published(String name) {
        return read(Path.of("src/test/resources/published", name));
    }

    static List<CSVRecord> read(Path file) {
        var format = CSVFormat.RFC4180
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var parser = CSVParser.parse(file, UTF_8, format)) {
            return parser.getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
