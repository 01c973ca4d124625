package batchwright.files.table;

import batchwright.files.table.CellPlaces.Place;
import batchwright.files.value.Problems;
import batchwright.text.SourceFile;
import batchwright.text.Written;
import java.util.ArrayList;
import java.util.List;

/**
 * The lines of a table as cells with their places (RFC 4180). Blank lines and comment lines are left out; a comment begins
 * with #, also when a spreadsheet has put it in quotes or hung commas on it.
 */
public final class CsvLines {
    /** @param sound whether every quote is where it should be */
    public record Line(int number, List<Written> cells, boolean sound) {}

    private CsvLines() {}

    public static List<Line> of(SourceFile file, Problems problems) {
        var lines = new ArrayList<Line>();
        for (int number = 1; number <= file.lines().size(); number++) {
            String line = file.line(number);
            if (isBlank(line) || isComment(line)) {
                continue;
            }
            var found = CellPlaces.of(line);
            if (found.badQuote().isPresent()) {
                badQuote(file, number, found.badQuote().getAsInt(), problems);
            }
            lines.add(new Line(
                    number, cells(file, number, found), found.badQuote().isEmpty()));
        }
        return lines;
    }

    private static void badQuote(SourceFile file, int number, int at, Problems problems) {
        boolean unclosed = file.line(number).charAt(at) == '"';
        problems.error(
                file.span(number, at + 1, 1),
                unclosed ? "this quote is not closed on its line" : "text follows a closed quote",
                "expected the whole cell in one pair of double quotes; a quote inside it is written twice");
    }

    /** Of a line with a bad quote, the cells before it: what can still be told. */
    private static List<Written> cells(SourceFile file, int number, CellPlaces found) {
        String line = file.line(number);
        var cells = new ArrayList<Written>(found.places().size());
        for (Place place : found.places()) {
            cells.add(new Written(place.text(line), file.span(number, place.start() + 1, place.end() - place.start())));
        }
        return cells;
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
