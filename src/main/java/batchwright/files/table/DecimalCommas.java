package batchwright.files.table;

import batchwright.text.Problem;
import batchwright.text.Span;
import batchwright.text.Written;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Numbers with a decimal comma and no quotes, which part into two cells and push the rest of the line to the right. They are sure
 * where a cell that is never a number alone holds one, and what belongs there stands further right.
 */
final class DecimalCommas {
    /** Columns behind numbers that are never a number alone, and what stands there. */
    private static final Map<String, Pattern> NEVER_A_NUMBER = Map.of(
            "currency",
            Pattern.compile("[A-Z]{3}"),
            "salt_or_sodium",
            Pattern.compile("(?i).*\\d *m?g +(of +)?(salt|sodium)|(salt|sodium) .*\\d *m?g"));

    private static final Pattern NUMBER = Pattern.compile("<?\\d+(\\.\\d+)?");

    private final List<Written> cells;
    private final String column;
    private final int place;

    private DecimalCommas(List<Written> cells, String column, int place) {
        this.cells = cells;
        this.column = column;
        this.place = place;
    }

    /** One problem for the whole line, in place of all that would be wrong with the cells that were pushed. */
    static Optional<Problem> in(List<Written> cells, Map<String, Integer> columns) {
        for (Map.Entry<String, Pattern> column : NEVER_A_NUMBER.entrySet()) {
            int place = columns.getOrDefault(column.getKey(), -1);
            if (place > 0
                    && place < cells.size()
                    && endsInDigit(cells.get(place).text())) {
                Optional<Problem> problem = new DecimalCommas(cells, column.getKey(), place).problem(column.getValue());
                if (problem.isPresent()) {
                    return problem;
                }
            }
        }
        return Optional.empty();
    }

    /** Quick to tell, for tables are long. */
    private static boolean endsInDigit(String text) {
        return !text.isEmpty() && Character.isDigit(text.charAt(text.length() - 1));
    }

    private Optional<Problem> problem(Pattern belongs) {
        boolean pushed = isNumber(place)
                && isNumber(place - 1)
                && cells.subList(place + 1, cells.size()).stream()
                        .anyMatch(cell -> belongs.matcher(cell.text()).matches());
        return pushed ? Optional.of(problem()) : Optional.empty();
    }

    private Problem problem() {
        int first = place;
        while (isNumber(first - 1)) {
            first--;
        }
        int last = place;
        while (isNumber(last + 1)) {
            last++;
        }
        int wanted = place - first;
        Span from = cells.get(first).at();
        Span to = cells.get(last).at();
        int length = to.column() + to.length() - from.column();
        return Problem.error(
                from.file().span(from.line(), from.column(), length),
                "these are %s numbers, and %s before %s"
                        .formatted(last - first + 1, wanted == 1 ? "1 belongs" : wanted + " belong", column),
                "expected decimals with a point, such as 2.29: a comma parts cells");
    }

    private boolean isNumber(int index) {
        return index >= 0
                && index < cells.size()
                && NUMBER.matcher(cells.get(index).text()).matches();
    }
}
