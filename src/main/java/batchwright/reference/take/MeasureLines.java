package batchwright.reference.take;

import batchwright.reference.Sr28Measure;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Measures of a food as lines of foods/measures.csv: no snack, until the user says so. */
public final class MeasureLines {
    private static final int DECIMALS = 2;

    private MeasureLines() {}

    /** @param food its id in the catalogue */
    public static List<String> of(String food, List<Sr28Measure> measures) {
        Map<String, String> lines = new LinkedHashMap<>();
        measures.forEach(m -> lines.putIfAbsent(name(m.description()), line(food, m)));
        return List.copyOf(lines.values());
    }

    private static String line(String food, Sr28Measure measure) {
        boolean one = new BigDecimal(measure.amount()).compareTo(BigDecimal.ONE) == 0;
        String source = "SR28 seq " + measure.sequence() + (one ? "" : " divided by " + measure.amount());
        return String.join(",", food, name(measure.description()), one ? measure.grams() : ofOne(measure), "", source);
    }

    private static String ofOne(Sr28Measure measure) {
        return new BigDecimal(measure.grams())
                .divide(new BigDecimal(measure.amount()), DECIMALS, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Without commas and what stands in brackets: "cup, sliced (about 9)" is cup sliced. */
    static String name(String description) {
        String outside = String.join(" ", Description.of(description).parts());
        return outside.replace("tablespoon", "tbsp").replace("teaspoon", "tsp");
    }
}
