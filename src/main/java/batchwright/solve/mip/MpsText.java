package batchwright.solve.mip;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/**
 * A model as MPS text, in the part of that format which solvers read alike: always a minimum; no constant in the objective; every
 * number plain; a set name on every right-hand side, range and bound; an upper bound or PL on every whole column; two-sided rows
 * as a lower row with a range.
 *
 * <p>Names are codes of eight characters, because some readers cut longer ones: C0000001 is the first column, R0000001 the first
 * row, COST the objective.
 */
public final class MpsText {
    /** Enough that a coefficient is off by less than a solver can notice; few enough that 3.4499999999999997 reads 3.45. */
    private static final MathContext DIGITS = new MathContext(15);

    private final MipModel model;
    private final StringBuilder text = new StringBuilder();

    private MpsText(MipModel model) {
        this.model = model;
    }

    /**
     * The text.
     *
     * @param remarks lines to stand on top
     */
    public static String of(MipModel model, Iterable<String> remarks) {
        if (model.costOffset() != 0) {
            throw new IllegalArgumentException("a constant in the objective (" + model.costOffset()
                    + ") is read differently by every solver; leave it out.");
        }
        var mps = new MpsText(model);
        remarks.forEach(remark -> mps.text.append("* ").append(remark).append('\n'));
        mps.write();
        return mps.text.toString();
    }

    public static String columnCode(int index) {
        return String.format(Locale.ROOT, "C%07d", index + 1);
    }

    public static String rowCode(int index) {
        return String.format(Locale.ROOT, "R%07d", index + 1);
    }

    private void write() {
        text.append("NAME          PLAN\n");
        text.append("ROWS\n N  COST\n");
        for (int i = 0; i < model.rows().size(); i++) {
            text.append(' ')
                    .append(sense(model.rows().get(i)))
                    .append("  ")
                    .append(rowCode(i))
                    .append('\n');
        }
        columns();
        text.append("RHS\n");
        for (int i = 0; i < model.rows().size(); i++) {
            BigDecimal right = right(model.rows().get(i));
            if (right.signum() != 0) {
                field("RHS", rowCode(i), right);
            }
        }
        ranges();
        text.append("BOUNDS\n");
        model.columns().forEach(this::bounds);
        text.append("ENDATA\n");
    }

    private static char sense(Row row) {
        if (row.lower() == row.upper()) {
            return 'E';
        }
        if (isFinite(row.lower())) {
            return 'G';
        }
        return isFinite(row.upper()) ? 'L' : 'N';
    }

    private static boolean isFinite(double value) {
        return !Double.isInfinite(value);
    }

    private static BigDecimal right(Row row) {
        if (isFinite(row.lower())) {
            return decimal(row.lower());
        }
        return isFinite(row.upper()) ? decimal(row.upper()) : BigDecimal.ZERO;
    }

    private void columns() {
        text.append("COLUMNS\n");
        StringBuilder[] entries = entries();
        boolean whole = false;
        int markers = 0;
        for (Column column : model.columns()) {
            if (column.whole() != whole) {
                whole = column.whole();
                marker(++markers, whole);
            }
            text.append(entries[column.index()]);
        }
        if (whole) {
            marker(++markers, false);
        }
    }

    private void marker(int number, boolean begin) {
        text.append(String.format(
                Locale.ROOT, "    M%07d  'MARKER'                 '%s'\n", number, begin ? "INTORG" : "INTEND"));
    }

    /** For each column its entries; the one of the objective always, so that a column in no row is declared too. */
    private StringBuilder[] entries() {
        double[] costs = model.costs();
        var entries = new StringBuilder[costs.length];
        for (int j = 0; j < costs.length; j++) {
            entries[j] = new StringBuilder();
            append(entries[j], columnCode(j), "COST", decimal(costs[j]));
        }
        for (int i = 0; i < model.rows().size(); i++) {
            Row row = model.rows().get(i);
            for (int k = 0; k < row.columns().length; k++) {
                int j = row.columns()[k];
                append(entries[j], columnCode(j), rowCode(i), decimal(row.coefficients()[k]));
            }
        }
        return entries;
    }

    private void ranges() {
        boolean any = false;
        for (int i = 0; i < model.rows().size(); i++) {
            Row row = model.rows().get(i);
            if (isFinite(row.lower()) && isFinite(row.upper()) && row.lower() != row.upper()) {
                if (!any) {
                    text.append("RANGES\n");
                    any = true;
                }
                field("RNG", rowCode(i), decimal(row.upper()).subtract(decimal(row.lower())));
            }
        }
    }

    private void bounds(Column column) {
        String code = columnCode(column.index());
        boolean below = isFinite(column.lower());
        boolean above = isFinite(column.upper());
        if (column.lower() == column.upper()) {
            bound("FX", code, column.lower());
            return;
        }
        if (!below && !above) {
            text.append(" FR BND       ").append(code).append('\n');
            return;
        }
        if (!below) {
            text.append(" MI BND       ").append(code).append('\n');
        } else if (column.lower() != 0) {
            bound("LO", code, column.lower());
        }
        if (above) {
            bound("UP", code, column.upper());
        } else if (column.whole()) {
            text.append(" PL BND       ").append(code).append('\n');
        }
    }

    private void bound(String kind, String code, double value) {
        text.append(' ')
                .append(kind)
                .append(" BND       ")
                .append(code)
                .append("  ")
                .append(plain(decimal(value)))
                .append('\n');
    }

    private void field(String set, String code, BigDecimal value) {
        append(text, "%-8s".formatted(set), code, value);
    }

    private static void append(StringBuilder to, String first, String second, BigDecimal value) {
        to.append("    ").append(first).append("  ");
        to.append("%-8s".formatted(second)).append("  ").append(plain(value)).append('\n');
    }

    private static BigDecimal decimal(double value) {
        return new BigDecimal(value).round(DIGITS);
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
