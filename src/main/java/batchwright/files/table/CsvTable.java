package batchwright.files.table;

import batchwright.files.value.Problems;
import batchwright.text.Problem;
import batchwright.text.SourceFile;
import batchwright.text.Span;
import batchwright.text.Written;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A table whose first line names the columns, in any order. */
public final class CsvTable {
    private final SourceFile file;
    private final Problems problems;
    private final Map<String, Integer> columns = new HashMap<>();
    /** Cells that a line must have at least: optional ones at its end may be left out. */
    private int leastCells;

    private CsvTable(SourceFile file, Problems problems) {
        this.file = file;
        this.problems = problems;
    }

    /** The rows below the header; empty when the header is not usable, so that nothing can be said about the rows. */
    public static Optional<List<TableRow>> rows(SourceFile file, int most, List<String> needed, Problems problems) {
        return rows(file, most, needed, List.of(), problems);
    }

    /**
     * The rows below the header, some columns of which may be left out.
     *
     * @param most lines it may have
     * @param optional columns that may be left out; in single lines too, when they are the last; their cells are then empty
     */
    public static Optional<List<TableRow>> rows(
            SourceFile file, int most, List<String> needed, List<String> optional, Problems problems) {
        var table = new CsvTable(file, problems);
        if (file.lines().size() > most) {
            problems.error(
                    Span.whole(file),
                    "the table has %s lines".formatted(file.lines().size()),
                    "expected at most %s in this table".formatted(most));
            return Optional.empty();
        }
        if (TableVersion.isNewer(file, problems)) {
            return Optional.empty();
        }
        List<CsvLines.Line> lines = CsvLines.of(file, problems);
        if (lines.isEmpty()) {
            problems.error(Span.whole(file), "the table is empty", "expected the header " + String.join(",", needed));
            return Optional.empty();
        }
        if (table.wrongSeparator(lines.get(0)) || !table.header(lines.get(0), needed, optional)) {
            return Optional.empty();
        }
        return Optional.of(lines.stream().skip(1).map(table::row).toList());
    }

    private boolean wrongSeparator(CsvLines.Line header) {
        String line = file.line(header.number());
        int at = Math.max(line.indexOf(';'), line.indexOf('\t'));
        if (line.indexOf(',') >= 0 || at < 0) {
            return false;
        }
        problems.error(
                file.span(header.number(), at + 1, 1),
                "the cells are separated by " + separator(line.charAt(at)),
                "expected commas between cells and points in numbers: save the table as CSV, comma separated");
        return true;
    }

    private static String separator(char c) {
        return c == ';' ? "semicolons" : "tabs";
    }

    /** In a single line, such as one pasted from elsewhere. */
    private boolean wrongSeparatorIn(CsvLines.Line line) {
        if (line.cells().size() >= leastCells) {
            return false;
        }
        String text = file.line(line.number());
        char separator = text.indexOf(';') >= 0 ? ';' : '\t';
        if (text.chars().filter(c -> c == separator).count() < leastCells - 1) {
            return false;
        }
        problems.error(
                file.span(line.number(), text.indexOf(separator) + 1, 1),
                "the cells of this line are separated by " + separator(separator),
                "expected commas between cells and points in numbers");
        return true;
    }

    private boolean header(CsvLines.Line header, List<String> needed, List<String> optional) {
        int before = problems.errors();
        List<String> names = Stream.concat(needed.stream(), optional.stream()).toList();
        List<Written> cells = withoutEmptyEnd(header.cells(), 0);
        for (int i = 0; i < cells.size(); i++) {
            Written cell = cells.get(i);
            if (!names.contains(cell.text())) {
                problems.unknown(
                        cell,
                        "there is no column called " + cell.quoted(),
                        "expected one of " + String.join(", ", names),
                        names);
            } else if (columns.putIfAbsent(cell.text(), i) != null) {
                problems.error(cell, "the column %s is there twice".formatted(cell.text()), "expected it once");
            }
        }
        List<String> missing =
                needed.stream().filter(n -> !columns.containsKey(n)).toList();
        if (header.sound() && problems.errors() == before && !missing.isEmpty()) {
            problems.error(
                    file.span(header.number(), 1, file.line(header.number()).length()),
                    "the header lacks " + String.join(", ", missing),
                    "expected " + String.join(",", needed));
        }
        leastCells = needed.stream()
                .mapToInt(n -> columns.getOrDefault(n, 0) + 1)
                .max()
                .orElse(0);
        return header.sound() && problems.errors() == before;
    }

    private static Written beforeSeparator(CsvLines.Line line) {
        Written first = line.cells().get(0);
        return new Written(first.text().split("[;\t]", 2)[0], first.at());
    }

    private TableRow row(CsvLines.Line line) {
        if (line.sound() && wrongSeparatorIn(line)) {
            return new TableRow(
                    columns, List.of(beforeSeparator(line)), file.span(line.number(), 1, 1), false, problems);
        }
        List<Written> cells = withoutEmptyEnd(line.cells(), columns.size());
        int width = file.line(line.number()).length();
        var whole = file.span(line.number(), 1, width);
        Optional<Problem> commas = DecimalCommas.in(cells, columns);
        boolean fits = cells.size() >= leastCells && cells.size() <= columns.size() && commas.isEmpty();
        if (line.sound() && commas.isPresent()) {
            problems.add(commas.get());
        } else if (line.sound() && cells.size() > columns.size()) {
            problems.error(
                    cells.get(columns.size()),
                    "%s cells, but the header names %s columns".formatted(cells.size(), columns.size()),
                    "expected numbers with a point (1.5), and text that holds a comma in double quotes");
        } else if (line.sound() && !fits) {
            problems.error(
                    file.span(line.number(), width + 1, 1),
                    "%s: the line ends before %s"
                            .formatted(cells.size() == 1 ? "1 cell" : cells.size() + " cells", columnAt(cells.size())),
                    "expected at least %s cells, the last of them %s: a comma for every cell, also for an empty one"
                            .formatted(leastCells, columnAt(leastCells - 1)));
        }
        return new TableRow(columns, cells, whole, line.sound() && fits, problems);
    }

    private String columnAt(int index) {
        return columns.entrySet().stream()
                .filter(column -> column.getValue() == index)
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }

    /** Without the empty cells that a spreadsheet adds beyond the last column. */
    private static List<Written> withoutEmptyEnd(List<Written> cells, int keep) {
        var kept = new ArrayList<>(cells);
        while (kept.size() > keep && kept.get(kept.size() - 1).isEmpty()) {
            kept.remove(kept.size() - 1);
        }
        return kept;
    }
}
