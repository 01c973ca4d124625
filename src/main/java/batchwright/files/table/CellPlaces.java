package batchwright.files.table;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Where the cells of one line of a table stand. A cell in double quotes may hold commas and, doubled, quotes; it must end
 * on its line, so that a forgotten quote is the fault of one line only.
 */
final class CellPlaces {
    /**
     * A cell without its quotes and the blanks around it.
     *
     * @param start from 0
     */
    record Place(int start, int end) {
        /** What the cell says: a doubled quote inside quotes is one. */
        String text(String line) {
            boolean quoted = start > 0 && line.charAt(start - 1) == '"';
            String text = line.substring(start, end);
            return quoted ? text.replace("\"\"", "\"") : text;
        }
    }

    private final String line;
    private final List<Place> places = new ArrayList<>();
    private OptionalInt badQuote = OptionalInt.empty();

    private CellPlaces(String line) {
        this.line = line;
    }

    static CellPlaces of(String line) {
        var cells = new CellPlaces(line);
        int next = 0;
        while (next >= 0) {
            next = cells.cell(next);
        }
        return cells;
    }

    List<Place> places() {
        return places;
    }

    /** Where a quote is not closed, or where text follows a closed one; from 0. */
    OptionalInt badQuote() {
        return badQuote;
    }

    /** Notes the cell that starts here and returns where the next one starts, or -1 after the last. */
    private int cell(int from) {
        int start = skipBlanks(from);
        return start < line.length() && line.charAt(start) == '"' ? quoted(start) : plain(start);
    }

    private int plain(int start) {
        int comma = line.indexOf(',', start);
        int end = comma < 0 ? line.length() : comma;
        int last = end;
        while (last > start && Character.isWhitespace(line.charAt(last - 1))) {
            last--;
        }
        places.add(new Place(start, last));
        return comma < 0 ? -1 : comma + 1;
    }

    private int quoted(int open) {
        int close = closing(open + 1);
        if (close < 0) {
            badQuote = OptionalInt.of(open);
            return -1;
        }
        places.add(new Place(open + 1, close));
        int after = skipBlanks(close + 1);
        if (after >= line.length()) {
            return -1;
        }
        if (line.charAt(after) != ',') {
            badQuote = OptionalInt.of(after);
            return -1;
        }
        return after + 1;
    }

    private int closing(int from) {
        for (int i = from; i < line.length(); i++) {
            if (line.charAt(i) == '"') {
                if (i + 1 == line.length() || line.charAt(i + 1) != '"') {
                    return i;
                }
                i++;
            }
        }
        return -1;
    }

    private int skipBlanks(int from) {
        int i = from;
        while (i < line.length() && Character.isWhitespace(line.charAt(i))) {
            i++;
        }
        return i;
    }
}
