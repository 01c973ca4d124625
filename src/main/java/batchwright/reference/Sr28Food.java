package batchwright.reference;

import batchwright.food.Nutrient;
import batchwright.text.Words;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** One food of USDA SR28, per 100 g of the edible part; values are the source's own digits. */
public final class Sr28Food {
    private static final int NDB_DIGITS = 5;
    private static final int GROUP = 2;
    private static final int FIRST_NUTRIENT = 3;
    private static final List<Nutrient> NUTRIENTS = Nutrient.columns();
    private static final int REFUSE = FIRST_NUTRIENT + NUTRIENTS.size();

    private final String line;
    private final String description;

    /** @param line number, description, group, nutrients in the order of {@link Nutrient#columns()}, refuse */
    Sr28Food(String line) {
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
        return cells().get(GROUP);
    }

    /** As written in the source; empty when it has no value. */
    public String written(Nutrient nutrient) {
        return cells().get(FIRST_NUTRIENT + NUTRIENTS.indexOf(nutrient));
    }

    public Optional<BigDecimal> amount(Nutrient nutrient) {
        return Optional.of(written(nutrient)).filter(text -> !text.isEmpty()).map(BigDecimal::new);
    }

    /** Per cent of the weight as bought, as written in the source; empty when it has no value. */
    public String refuse() {
        return cells().get(REFUSE);
    }

    private List<String> cells() {
        return Cells.of(line);
    }

    @Override
    public String toString() {
        return ndb() + " " + description;
    }
}
