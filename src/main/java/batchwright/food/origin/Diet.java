package batchwright.food.origin;

import batchwright.text.ResourceTable;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A diet, or one thing that somebody leaves out: a set of origins. It says what is left out, never that a plan is halal or kosher:
 * slaughter, certificates and tools cannot be judged from ingredients.
 *
 * @param words that stand for it in the files; the first is its name
 * @param says what it leaves out, for people
 * @param bars origins that it never has
 * @param asks origins that it has only if the label says so: gelatine where pork is left out
 * @param wholeDish whether something barred in one part of a dish bars the dish, also where that part is left out: parts share a
 *     pot, a board and a spoon
 * @param source where the set comes from
 */
public record Diet(
        List<String> words, String says, Set<Origin> bars, Set<Origin> asks, boolean wholeDish, String source) {
    private static final int COLUMNS = 6;
    private static final List<Diet> ALL = ResourceTable.divided(Diet.class, "diets.csv", COLUMNS).stream()
            .map(Diet::of)
            .toList();

    /** Whether a food may reach somebody of this diet. */
    public enum Answer {
        YES,
        /** The files do not say enough: the label decides. */
        ASK,
        NO
    }

    public Diet {
        words = List.copyOf(words);
        bars = Set.copyOf(bars);
        asks = Set.copyOf(asks);
    }

    /** In the order of the table. */
    public static List<Diet> all() {
        return ALL;
    }

    /** Blanks and hyphens count as underscores: lactose-free is lactose_free. */
    public static Optional<Diet> byWord(String word) {
        String id = word.strip().toLowerCase(Locale.ROOT).replace(' ', '_').replace('-', '_');
        return ALL.stream().filter(diet -> diet.words.contains(id)).findFirst();
    }

    public String name() {
        return words.get(0);
    }

    public Answer has(Origins origins) {
        if (origins.certain().stream().anyMatch(bars::contains)) {
            return Answer.NO;
        }
        boolean sure = origins.known() && doubts(origins).isEmpty();
        return sure ? Answer.YES : Answer.ASK;
    }

    /** Which of its origins are a question for this diet. */
    public Set<Origin> doubts(Origins origins) {
        var doubts = EnumSet.noneOf(Origin.class);
        origins.doubtful().stream()
                .filter(origin -> bars.contains(origin) || asks.contains(origin))
                .forEach(doubts::add);
        origins.certain().stream().filter(asks::contains).forEach(doubts::add);
        return doubts;
    }

    /** Two diets are the same when they have the same name: the table holds a name once. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Diet that && name().equals(that.name());
    }

    @Override
    public int hashCode() {
        return name().hashCode();
    }

    private static Diet of(List<String> cells) {
        return new Diet(
                ResourceTable.words(cells.get(0)),
                cells.get(1),
                origins(cells.get(2)),
                origins(cells.get(3)),
                cells.get(4).equals("yes"),
                cells.get(5));
    }

    private static Set<Origin> origins(String cell) {
        var origins = EnumSet.noneOf(Origin.class);
        Stream.of(cell.split(" ", -1))
                .filter(word -> !word.isEmpty())
                .forEach(word -> origins.add(Origin.byId(word).orElseThrow()));
        return origins;
    }
}
