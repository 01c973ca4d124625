package batchwright.report.print;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A table for the terminal: text to the left, numbers to the right. When it would be too wide, the widest text columns
 * are wrapped. A line break in a head makes two lines of it.
 */
public final class TextTable {
    private static final String BETWEEN = "  ";

    private record Column(String head, boolean right) {
        int headWidth() {
            return head.lines().mapToInt(String::length).max().orElse(0);
        }
    }

    private final String indent;
    private final List<Column> columns = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();

    public TextTable(String indent) {
        this.indent = indent;
    }

    public TextTable left(String head) {
        columns.add(new Column(head, false));
        return this;
    }

    public TextTable right(String head) {
        columns.add(new Column(head, true));
        return this;
    }

    public TextTable row(String... cells) {
        if (cells.length != columns.size()) {
            throw new IllegalArgumentException("cells (" + cells.length + ") must be as many as columns.");
        }
        rows.add(List.of(cells));
        return this;
    }

    /** Whether some cell holds this text. */
    public boolean contains(String text) {
        return rows.stream().flatMap(List::stream).anyMatch(cell -> cell.contains(text));
    }

    /** @param most columns it may have, if words allow */
    List<String> lines(int most) {
        int[] widths = widths(most);
        List<String> lines = new ArrayList<>(headLines(widths));
        for (List<String> row : rows) {
            lines.addAll(rowLines(row, widths));
        }
        return lines;
    }

    private int[] widths(int most) {
        int[] widths = new int[columns.size()];
        for (int c = 0; c < widths.length; c++) {
            widths[c] = Math.max(columns.get(c).headWidth(), widest(c, cell -> new String[] {cell}));
        }
        int tooMany = indent.length()
                + BETWEEN.length() * (widths.length - 1)
                - most
                + IntStream.of(widths).sum();
        if (tooMany > 0) {
            shrink(widths, tooMany);
        }
        return widths;
    }

    /** Takes from the widest text column again and again, but breaks no word. */
    private void shrink(int[] widths, int tooMany) {
        int[] words = new int[widths.length];
        for (int c = 0; c < widths.length; c++) {
            words[c] = Math.max(columns.get(c).headWidth(), widest(c, cell -> cell.split(" ", -1)));
        }
        for (int i = 0; i < tooMany; i++) {
            int giver = -1;
            for (int c = 0; c < widths.length; c++) {
                if (!columns.get(c).right() && widths[c] > words[c] && (giver < 0 || widths[c] > widths[giver])) {
                    giver = c;
                }
            }
            if (giver < 0) {
                return;
            }
            widths[giver]--;
        }
    }

    private int widest(int column, Function<String, String[]> pieces) {
        return rows.stream()
                .flatMap(row -> Stream.of(pieces.apply(row.get(column))))
                .mapToInt(String::length)
                .max()
                .orElse(0);
    }

    private List<String> headLines(int[] widths) {
        List<List<String>> cells =
                columns.stream().map(c -> c.head().lines().toList()).toList();
        int height = cells.stream().mapToInt(List::size).max().orElse(0);
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < height; i++) {
            List<String> line = new ArrayList<>();
            for (List<String> cell : cells) {
                int from = height - cell.size(); // heads stand on the rows
                line.add(i < from ? "" : cell.get(i - from));
            }
            lines.add(joined(line, widths));
        }
        return lines;
    }

    private List<String> rowLines(List<String> row, int[] widths) {
        List<List<String>> cells = new ArrayList<>();
        for (int c = 0; c < widths.length; c++) {
            cells.add(Page.wrap(row.get(c), widths[c]));
        }
        int height = cells.stream().mapToInt(List::size).max().orElse(0);
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < height; i++) {
            int at = i;
            lines.add(joined(
                    cells.stream().map(c -> at < c.size() ? c.get(at) : "").toList(), widths));
        }
        return lines;
    }

    private String joined(List<String> cells, int[] widths) {
        var line = new StringBuilder(indent);
        for (int c = 0; c < widths.length; c++) {
            String space = " ".repeat(Math.max(0, widths[c] - cells.get(c).length()));
            line.append(c == 0 ? "" : BETWEEN);
            line.append(columns.get(c).right() ? space + cells.get(c) : cells.get(c) + space);
        }
        return line.toString().stripTrailing();
    }
}
