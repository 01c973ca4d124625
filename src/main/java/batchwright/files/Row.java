package batchwright.files;

import batchwright.text.Span;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One line of a table, its cells by the name of their column. */
final class Row {
    private final Map<String, Integer> columns;
    private final List<Written> cells;
    private final Span line;
    private final boolean sound;
    private final Problems problems;

    Row(Map<String, Integer> columns, List<Written> cells, Span line, boolean sound, Problems problems) {
        this.columns = columns;
        this.cells = cells;
        this.line = line;
        this.sound = sound;
        this.problems = problems;
    }

    /** Whether it has as many cells as columns and sound quotes; otherwise only {@link #cell} is of use. */
    boolean isSound() {
        return sound;
    }

    /** The first cell of a line that is not sound: whatever is wrong behind it, this one says what it should. */
    Optional<Written> sure(String column) {
        boolean first = Integer.valueOf(0).equals(columns.get(column)) && !cells.isEmpty();
        return first ? Optional.of(cells.get(0)).filter(cell -> !cell.isEmpty()) : Optional.empty();
    }

    boolean hasColumn(String column) {
        return columns.containsKey(column);
    }

    /** The cell, which may be empty. */
    Written cell(String column) {
        Integer index = columns.get(column);
        return index == null || index >= cells.size() ? new Written("", line) : cells.get(index);
    }

    /** The cell, which must not be empty. */
    Optional<Written> need(String column, String ask) {
        Written cell = cell(column);
        if (cell.isEmpty()) {
            problems.error(cell, column + " is empty", ask);
            return Optional.empty();
        }
        return Optional.of(cell);
    }

    Optional<BigDecimal> decimal(String column, Range range) {
        Written cell = cell(column);
        return cell.isEmpty()
                ? decimal(column, range, "Enter the " + range.what() + range.inUnit())
                : new Numbers(problems).decimal(cell, range);
    }

    Optional<BigDecimal> decimal(String column, Range range, String ask) {
        return need(column, ask).flatMap(cell -> new Numbers(problems).decimal(cell, range));
    }

    boolean yesNo(String column) {
        return need(column, "Enter yes or no")
                .flatMap(cell -> YesNo.read(cell, problems))
                .orElse(false);
    }
}
