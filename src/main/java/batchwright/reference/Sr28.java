package batchwright.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * USDA SR28 without the foods whose description holds a trade name: US Department of Agriculture, Agricultural Research Service,
 * Nutrient Data Laboratory. USDA National Nutrient Database for Standard Reference, Release 28. Version Current: September 2015.
 *
 * <p>The table is one long text. Rows are found in it and taken apart only when they are asked for, because most questions are
 * about a few of them.
 */
public final class Sr28 {
    private static final int NDB_DIGITS = 5;

    private final List<String> columns;
    private final String text;

    private Sr28(List<String> columns, String text) {
        this.columns = columns;
        this.text = text;
    }

    public static Sr28 load() {
        return new Sr28(Resource.columns("sr28.csv"), Resource.rows("sr28.csv"));
    }

    /** The food with this NDB number, five digits. */
    public Optional<Sr28Food> food(String ndb) {
        int at = ndb.length() == NDB_DIGITS ? text.indexOf("\n" + ndb + ",") : -1;
        return at < 0 ? Optional.empty() : Optional.of(rowAt(at + 1));
    }

    /** All foods, in the order of their numbers. */
    public List<Sr28Food> foods() {
        var foods = new ArrayList<Sr28Food>();
        for (int at = 1; at < text.length(); at = text.indexOf('\n', at) + 1) {
            foods.add(rowAt(at));
        }
        return foods;
    }

    private Sr28Food rowAt(int start) {
        return new Sr28Food(text.substring(start, text.indexOf('\n', start)), columns);
    }
}
