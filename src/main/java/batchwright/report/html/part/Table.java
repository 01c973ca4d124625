package batchwright.report.html.part;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A table of figures. The first cell of a row names it; numbers stand at the right. */
public final class Table {
    private static final String NUMBERS = "n";
    private static final String WORDS = "w";

    /** @param look a class of the style sheet, as in all of these */
    public record Column(String head, String look) {}

    public record Row(String look, String name, List<Cell> cells) {}

    public record Cell(String text, String look) {}

    private final String caption;
    private final List<Column> columns = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();

    /** @param caption says what the table is, for those who cannot see where it stands */
    public Table(String caption) {
        this.caption = caption;
    }

    public String caption() {
        return caption;
    }

    public List<Column> columns() {
        return Collections.unmodifiableList(columns);
    }

    public List<Row> rows() {
        return Collections.unmodifiableList(rows);
    }

    /** Columns come before rows. */
    public Table words(String head) {
        columns.add(new Column(head, WORDS));
        return this;
    }

    public Table numbers(String head) {
        columns.add(new Column(head, NUMBERS));
        return this;
    }

    public Table row(String... cells) {
        return rowLike("row", cells);
    }

    /** @param look total, target */
    public Table rowLike(String look, String... cells) {
        List<Cell> others = new ArrayList<>();
        for (int i = 1; i < cells.length; i++) {
            others.add(new Cell(cells[i], columns.get(i).look()));
        }
        rows.add(new Row(look, cells[0], others));
        return this;
    }
}
