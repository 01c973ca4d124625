package batchwright.reference;

import batchwright.food.Nutrient;
import batchwright.text.Words;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** One food of USDA SR28, per 100 g of the edible part; values are the source's own digits. */
public final class Sr28Food {
    private static final int NDB_DIGITS = 5;

    private final String line;
    private final List<String> columns;
    private final String description;

    /**
     * @param line number, description, and then in any order its group, nutrients and refuse
     * @param columns their names
     */
    Sr28Food(String line, List<String> columns) {
        this.columns = columns;
        this.line = line;
        int start = NDB_DIGITS + 1;
        this.description = line.charAt(start) == '"' ? quoted(start) : line.substring(start, line.indexOf(',', start));
    }

    private String quoted(int start) {
        int end = line.indexOf('"', start + 1);
        while (line.startsWith("\"\"", end)) {
            end = line.indexOf('"', end + 2);
        }
        return line.substring(start + 1, end).replace("\"\"", "\"");
    }

    /** Five digits. */
    public String ndb() {
        return line.substring(0, NDB_DIGITS);
    }

    public String description() {
        return description;
    }

    /** The words of the description. */
    public List<String> words() {
        return Words.of(description);
    }

    /** The source's food group. */
    public String group() {
        return cell("GROUP");
    }

    /** As written in the source; empty when it has no value. */
    public String written(Nutrient nutrient) {
        return cell(nutrient.tagname());
    }

    public Optional<BigDecimal> amount(Nutrient nutrient) {
        return Optional.of(written(nutrient)).filter(text -> !text.isEmpty()).map(BigDecimal::new);
    }

    /** Per cent of the weight as bought, as written in the source; empty when it has no value. */
    public String refuse() {
        return cell("REFUSE");
    }

    /** Empty when the table has no such column. */
    private String cell(String column) {
        int at = columns.indexOf(column);
        return at < 0 ? "" : Cells.of(line).get(at);
    }

    @Override
    public String toString() {
        return ndb() + " " + description;
    }
}
