package batchwright.files;

import batchwright.files.CellPlaces.Place;
import batchwright.text.SourceFile;
import batchwright.text.Written;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The lines of a table as cells with their places (RFC 4180). Blank lines and comment lines are left out; a comment begins
 * with #, also when a spreadsheet has put it in quotes or hung commas on it.
 */
final class CsvLines {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setIgnoreSurroundingSpaces(true).get();

    /** @param sound whether every quote is where it should be */
    record Line(int number, List<Written> cells, boolean sound) {}

    private CsvLines() {}

    static List<Line> of(SourceFile file, Problems problems) {
        var numbers = new ArrayList<Integer>();
        var places = new ArrayList<CellPlaces>();
        var lines = new ArrayList<Line>();
        for (int number = 1; number <= file.lines().size(); number++) {
            String line = file.line(number);
            if (isBlank(line) || isComment(line)) {
                continue;
            }
            var found = CellPlaces.of(line);
            if (found.badQuote().isPresent()) {
                lines.add(broken(file, number, found.badQuote().getAsInt(), problems));
            } else {
                numbers.add(number);
                places.add(found);
            }
        }
        List<CSVRecord> records = parse(file, numbers);
        for (int i = 0; i < records.size(); i++) {
            lines.add(new Line(numbers.get(i), cells(file, numbers.get(i), records.get(i), places.get(i)), true));
        }
        lines.sort(java.util.Comparator.comparingInt(Line::number));
        return lines;
    }

    /** What can still be told of such a line: the cells before the quote. */
    private static Line broken(SourceFile file, int number, int at, Problems problems) {
        String line = file.line(number);
        boolean unclosed = line.charAt(at) == '"';
        problems.error(
                file.span(number, at + 1, 1),
                unclosed ? "this quote is not closed on its line" : "text follows a closed quote",
                "expected the whole cell in one pair of double quotes; a quote inside it is written twice");
        var cells = new ArrayList<Written>();
        CellPlaces.of(line).places().forEach(p -> cells.add(cell(file, number, line.substring(p.start(), p.end()), p)));
        return new Line(number, cells, false);
    }

    /** Every line given is a record of its own, because its quotes are closed. */
    private static List<CSVRecord> parse(SourceFile file, List<Integer> numbers) {
        String text = numbers.stream().map(file::line).collect(Collectors.joining("\n"));
        try (CSVParser parser = CSVParser.parse(text, FORMAT)) {
            return parser.getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Written> cells(SourceFile file, int line, CSVRecord record, CellPlaces found) {
        var cells = new ArrayList<Written>(record.size());
        for (int i = 0; i < record.size(); i++) {
            cells.add(cell(file, line, record.get(i), found.places().get(i)));
        }
        return cells;
    }

    private static Written cell(SourceFile file, int line, String text, Place place) {
        return new Written(text, file.span(line, place.start() + 1, place.end() - place.start()));
    }

    private static boolean isComment(String line) {
        String start = line.stripLeading();
        return start.startsWith("#") || start.startsWith("\"#");
    }

    /** A spreadsheet leaves lines of nothing but commas behind. */
    private static boolean isBlank(String line) {
        return line.chars().allMatch(c -> c == ',' || Character.isWhitespace(c));
    }
}
