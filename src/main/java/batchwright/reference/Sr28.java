package batchwright.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

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
    private final String small;

    private Sr28(List<String> columns, String text) {
        this.columns = columns;
        this.text = text;
        this.small = text.toLowerCase(Locale.ROOT);
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

    /** Foods in whose line this piece of a word stands somewhere, in the order of their numbers. */
    List<Sr28Food> holding(String piece) {
        var foods = new ArrayList<Sr28Food>();
        int at = small.indexOf(piece, 1);
        while (at >= 0) {
            foods.add(rowAt(text.lastIndexOf('\n', at) + 1));
            at = small.indexOf(piece, text.indexOf('\n', at));
        }
        return foods;
    }

    /** Every word of every description. */
    public Set<String> words() {
        var words = new TreeSet<String>();
        foods().forEach(food -> words.addAll(food.words()));
        return words;
    }

    private Sr28Food rowAt(int start) {
        return new Sr28Food(text.substring(start, text.indexOf('\n', start)), columns);
    }
}
