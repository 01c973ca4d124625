package batchwright.files;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;

/** One row of the Indian Food Composition Tables 2017: kJ and grams per 100 g, columns named "Energy; enerc". */
record IndianFood(Map<String, String> cells) {
    private static final BigDecimal MG_PER_G = BigDecimal.valueOf(1000);

    static List<IndianFood> all(Path table) {
        return Tables.rows(table).stream().map(IndianFood::of).toList();
    }

    private static IndianFood of(CSVRecord row) {
        return new IndianFood(row.toMap().entrySet().stream()
                .collect(Collectors.toMap(e -> e.getKey().replaceFirst(".*; ", ""), Map.Entry::getValue)));
    }

    String code() {
        return cells.getOrDefault("code", "");
    }

    String id() {
        return code().toLowerCase(Locale.ROOT);
    }

    double number(String tag) {
        return decimal(tag).doubleValue();
    }

    private BigDecimal decimal(String tag) {
        return new BigDecimal(cells.getOrDefault(tag, ""));
    }

    double kilojoules() {
        return number("enerc");
    }

    double protein() {
        return number("protcnt");
    }

    double fat() {
        return number("fatce");
    }

    double carbohydrate() {
        return number("choavldf");
    }

    double fibre() {
        return number("fibtg");
    }

    double carbohydrateByDifference() {
        return 100 - number("water") - number("ash") - protein() - fat() - fibre();
    }

    /** Part of something that it is more than: not known, then. */
    IndianFood withoutImpossibleCells() {
        var known = new java.util.HashMap<>(cells);
        if (number("fasat") > fat()) {
            known.put("fasat", "0");
        }
        if (number("fsugar") > carbohydrate()) {
            known.put("fsugar", "0");
        }
        return new IndianFood(known);
    }

    /** As a line of labels.csv; a zero that may be "not measured" becomes an empty cell. */
    String line() {
        String name = "\"" + cells.getOrDefault("name", "").replace("\"", "\"\"") + "\"";
        String sodium = milligrams("na").isEmpty() ? "" : milligrams("na") + " mg sodium";
        return String.join(
                        ",",
                        id(),
                        name,
                        "other",
                        "eu",
                        "100 g",
                        cell("enerc") + " kJ",
                        cell("fatce"),
                        unlessZero("fasat"),
                        cell("choavldf"),
                        unlessZero("fsugar"),
                        cell("fibtg"),
                        cell("protcnt"),
                        sodium,
                        milligrams("k"),
                        milligrams("ca"),
                        milligrams("fe"),
                        "")
                + "\n";
    }

    private String cell(String tag) {
        return decimal(tag).toPlainString();
    }

    private String unlessZero(String tag) {
        return decimal(tag).signum() == 0 ? "" : cell(tag);
    }

    private String milligrams(String tag) {
        return decimal(tag).signum() == 0 ? "" : decimal(tag).multiply(MG_PER_G).toPlainString();
    }
}
