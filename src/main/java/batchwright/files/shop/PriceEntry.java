package batchwright.files.shop;

import batchwright.files.table.CsvLines;
import batchwright.files.value.Problems;
import batchwright.food.Contents;
import batchwright.food.Food;
import batchwright.quantity.Currency;
import batchwright.text.SourceFile;
import batchwright.text.Written;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A price that the user has seen, to be put into foods/shop.csv: into the line of the same pack in the same shop, or as a line of its
 * own behind those of the food.
 *
 * @param shop as the user names it; an equal name in other letter case is the same shop
 * @param contents of the pack, as the column grams takes it: 500 g, 4 x 400 g
 * @param label what the shelf says; empty when the pack has no other name than its contents
 * @param price as the column price takes it
 */
public record PriceEntry(Food food, String shop, String contents, Optional<String> label, String price) {
    private static final String USUAL_LABEL = "pack";
    private static final String NOTE = "own price";
    /** How the starter files begin their notes: for a price that was seen it would be false. */
    private static final String INVENTED = "invented";

    /**
     * One changed line of the table.
     *
     * @param number of the line that is replaced, or behind which the new one goes; from 1
     * @param replaces whether the line is replaced
     * @param line as it is to be written, without its end
     * @param priceBefore of the line that is replaced
     */
    public record Change(int number, boolean replaces, String line, Optional<String> priceBefore) {}

    /** Several lines fit: the label has to tell which. */
    public static final class Ambiguous extends Exception {
        private static final long serialVersionUID = 1L;

        Ambiguous(List<String> labels) {
            super(String.join(", ", labels));
        }

        /** Labels of the packs that fit, with commas between. */
        public String labels() {
            return String.valueOf(getMessage());
        }
    }

    /** @throws Ambiguous when more than one line is of such a pack */
    public Change in(SourceFile table, Currency currency, LocalDate seen) throws Ambiguous {
        List<CsvLines.Line> lines = CsvLines.of(table, new Problems());
        List<String> columns = lines.get(0).cells().stream().map(Written::text).toList();
        List<CsvLines.Line> ofFood = lines.stream()
                .skip(1)
                .filter(line -> cell(line, columns, "food").equals(food.id()))
                .toList();
        List<CsvLines.Line> same =
                ofFood.stream().filter(line -> isSame(line, columns)).toList();
        if (same.size() > 1) {
            throw new Ambiguous(
                    same.stream().map(line -> cell(line, columns, "pack")).toList());
        }
        Map<String, String> cells = new HashMap<>();
        cells.put("price", price);
        cells.put("seen", seen.toString());
        cells.put("note", NOTE);
        if (same.size() == 1) {
            CsvLines.Line old = same.get(0);
            columns.forEach(column -> cells.putIfAbsent(column, cell(old, columns, column)));
            String note = cell(old, columns, "note");
            if (!note.startsWith(INVENTED)) {
                cells.put("note", note);
            }
            return new Change(old.number(), true, line(columns, cells), Optional.of(cell(old, columns, "price")));
        }
        cells.put("food", food.id());
        cells.put("shop", shopAsWritten(lines, columns));
        cells.put("pack", label.orElse(USUAL_LABEL));
        cells.put("grams", contents);
        cells.put("currency", currency.code());
        int behind = ofFood.isEmpty()
                ? table.lines().size()
                : ofFood.get(ofFood.size() - 1).number();
        return new Change(behind, false, line(columns, cells), Optional.empty());
    }

    private boolean isSame(CsvLines.Line line, List<String> columns) {
        return cell(line, columns, "shop").equalsIgnoreCase(shop)
                && label.map(cell(line, columns, "pack")::equals).orElse(true)
                && contents(line, columns)
                        .equals(contents(
                                new Written(contents, line.cells().get(0).at())));
    }

    private String shopAsWritten(List<CsvLines.Line> lines, List<String> columns) {
        return lines.stream()
                .map(line -> cell(line, columns, "shop"))
                .filter(shop::equalsIgnoreCase)
                .findFirst()
                .orElse(shop);
    }

    private static String contents(CsvLines.Line line, List<String> columns) {
        return contents(
                new Written(cell(line, columns, "grams"), line.cells().get(0).at()));
    }

    /** In one form, to be compared. */
    private static String contents(Written grams) {
        var ignored = new Problems();
        return new ContentsGrammar(ignored)
                .read(grams, new Written("", grams.at()))
                .map(PriceEntry::form)
                .orElse(grams.text());
    }

    private static String form(Contents contents) {
        return contents.units() + " x "
                + contents.unitGrams().stripTrailingZeros().toPlainString();
    }

    private static String cell(CsvLines.Line line, List<String> columns, String column) {
        int at = columns.indexOf(column);
        return at < 0 || at >= line.cells().size() ? "" : line.cells().get(at).text();
    }

    /** Empty cells at the end are left out, as far as the columns that every line needs. */
    private static String line(List<String> columns, Map<String, String> cells) {
        List<String> written = new ArrayList<>();
        columns.forEach(column -> written.add(quoted(cells.getOrDefault(column, ""))));
        while (written.size() > ShopTable.COLUMNS.size()
                && written.get(written.size() - 1).isEmpty()) {
            written.remove(written.size() - 1);
        }
        return written.stream().collect(Collectors.joining(","));
    }

    private static String quoted(String text) {
        boolean plain = text.indexOf(',') < 0 && text.indexOf('"') < 0 && text.equals(text.strip());
        return plain ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }
}
