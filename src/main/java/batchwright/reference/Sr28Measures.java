package batchwright.reference;

import java.util.ArrayList;
import java.util.List;

/** The kitchen measures of the foods of USDA SR28: cups, spoons, slices, pieces. Packs of a shop and the like are left out. */
public final class Sr28Measures {
    private static final int SEQUENCE = 1;
    private static final int AMOUNT = 2;
    private static final int DESCRIPTION = 3;
    private static final int GRAMS = 4;

    private final String text;

    private Sr28Measures(String text) {
        this.text = text;
    }

    public static Sr28Measures load() {
        return new Sr28Measures(Resource.rows("sr28_measures.csv"));
    }

    /** In the source's order. */
    public List<Sr28Measure> of(Sr28Food food) {
        String start = "\n" + food.ndb() + ",";
        var measures = new ArrayList<Sr28Measure>();
        for (int at = text.indexOf(start); at >= 0; at = text.indexOf(start, at + 1)) {
            List<String> cells = Cells.of(text.substring(at + 1, text.indexOf('\n', at + 1)));
            measures.add(
                    new Sr28Measure(cells.get(SEQUENCE), cells.get(AMOUNT), cells.get(DESCRIPTION), cells.get(GRAMS)));
        }
        return measures;
    }
}
