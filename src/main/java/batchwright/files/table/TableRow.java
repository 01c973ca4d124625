package batchwright.files.table;

import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.files.value.YesNo;
import batchwright.text.Span;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One line of a table, its cells by the name of their column. */
public final class TableRow {
    private final Map<String, Integer> columns;
    private final List<Written> cells;
    private final Span line;
    private final boolean sound;
    private final Problems problems;

    TableRow(Map<String, Integer> columns, List<Written> cells, Span line, boolean sound, Problems problems) {
        this.columns = columns;
        this.cells = cells;
        this.line = line;
        this.sound = sound;
        this.problems = problems;
    }

    /** Whether it has as many cells as columns and sound quotes; otherwise only {@link #cell} is of use. */
    public boolean isSound() {
        return sound;
    }

    /** The first cell of a line that is not sound: whatever is wrong behind it, this one says what it should. */
    public Optional<Written> sure(String column) {
        boolean first = Integer.valueOf(0).equals(columns.get(column)) && !cells.isEmpty();
        return first ? Optional.of(cells.get(0)).filter(cell -> !cell.isEmpty()) : Optional.empty();
    }

    public boolean hasColumn(String column) {
        return columns.containsKey(column);
    }

    /** The cell, which may be empty. */
    public Written cell(String column) {
        Integer index = columns.get(column);
        return index == null || index >= cells.size() ? new Written("", line) : cells.get(index);
    }

    /** The cell, which must not be empty. */
    public Optional<Written> need(String column, String ask) {
        Written cell = cell(column);
        if (cell.isEmpty()) {
            problems.error(cell, column + " is empty", ask);
            return Optional.empty();
        }
        return Optional.of(cell);
    }

    public Optional<BigDecimal> decimal(String column, NumberRange range) {
        Written cell = cell(column);
        return cell.isEmpty()
                ? decimal(column, range, "Enter the " + range.what() + range.inUnit())
                : new Numbers(problems).decimal(cell, range);
    }

    public Optional<BigDecimal> decimal(String column, NumberRange range, String ask) {
        return need(column, ask).flatMap(cell -> new Numbers(problems).decimal(cell, range));
    }

    public boolean yesNo(String column) {
        return need(column, "Enter yes or no")
                .flatMap(cell -> YesNo.read(cell, problems))
                .orElse(false);
    }
}
