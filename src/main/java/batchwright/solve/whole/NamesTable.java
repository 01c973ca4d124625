package batchwright.solve.whole;

import batchwright.solve.mip.Column;
import batchwright.solve.mip.MipModel;
import batchwright.solve.mip.MpsText;
import java.util.List;

/** The codes of the MPS text beside their names: a table for people, one line for each column and row. */
final class NamesTable {
    static final String HEAD = "code,kind,name,meaning,unit\n";

    private final StringBuilder text = new StringBuilder(HEAD);

    private NamesTable() {}

    static String of(WholeDraft draft) {
        var table = new NamesTable();
        MipModel model = draft.model();
        table.line("COST", "objective", "cost", "checkout cost, to be as small as can be", "minor units");
        for (Column column : model.columns()) {
            Meaning meaning = Meaning.ofColumn(column.name());
            String says = draft.packOf(column)
                    .map(pack -> meaning.says() + ": " + pack.label() + ", "
                            + pack.grams().stripTrailingZeros().toPlainString() + " g")
                    .orElse(meaning.says());
            table.line(MpsText.columnCode(column.index()), "column", column.name(), says, meaning.unit());
        }
        List<String> rows = model.rowNames();
        for (int i = 0; i < rows.size(); i++) {
            Meaning meaning = Meaning.ofRow(rows.get(i), draft.request().seats());
            table.line(MpsText.rowCode(i), "row", rows.get(i), meaning.says(), meaning.unit());
        }
        return table.text.toString();
    }

    private void line(String... cells) {
        for (int k = 0; k < cells.length; k++) {
            text.append(k == 0 ? "" : ",").append(quoted(cells[k]));
        }
        text.append('\n');
    }

    private static String quoted(String cell) {
        return cell.matches("[^\",\r\n]*") ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
