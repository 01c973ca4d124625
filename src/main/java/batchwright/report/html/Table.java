package batchwright.report.html;

import java.util.ArrayList;
import java.util.List;

/** A table of figures. The first cell of a row names it; numbers stand at the right. */
final class Table {
    private record Column(String head, boolean number) {}

    private record Row(String look, List<String> cells) {}

    private final String caption;
    private final List<Column> columns = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();

    /** @param caption says what the table is, for those who cannot see where it stands */
    Table(String caption) {
        this.caption = caption;
    }

    Table words(String head) {
        columns.add(new Column(head, false));
        return this;
    }

    Table numbers(String head) {
        columns.add(new Column(head, true));
        return this;
    }

    Table row(String... cells) {
        return rowLike("", cells);
    }

    /** @param look a class of the style sheet: total, target */
    Table rowLike(String look, String... cells) {
        rows.add(new Row(look, List.of(cells)));
        return this;
    }

    void write(Html html) {
        html.open("table").element("caption", caption).open("thead").open("tr");
        columns.forEach(c -> html.element("th", c.head, "scope", "col", "class", c.number ? "n" : "w"));
        html.close().close().line().open("tbody");
        rows.forEach(row -> row(html, row));
        html.close().close().line();
    }

    private void row(Html html, Row row) {
        html.open("tr", "class", row.look.isEmpty() ? "row" : row.look);
        for (int i = 0; i < row.cells.size(); i++) {
            if (i == 0) {
                html.open("th", "scope", "row").name(row.cells.get(0)).close();
            } else {
                html.element("td", row.cells.get(i), "class", columns.get(i).number ? "n" : "w");
            }
        }
        html.close().line();
    }
}
