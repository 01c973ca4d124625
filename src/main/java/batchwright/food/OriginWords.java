package batchwright.food;

import batchwright.food.origin.Origin;
import batchwright.food.origin.OriginList;
import batchwright.food.origin.Origins;
import batchwright.text.ResourceTable;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What a name alone tells of origins, by the words of origin_words.csv. A name with none of them is not known. */
public final class OriginWords {
    private static final int COLUMNS = 2;
    private static final List<OriginWords> ALL =
            ResourceTable.divided(OriginWords.class, "origin_words.csv", COLUMNS).stream()
                    .map(OriginWords::new)
                    .toList();
    /** Such a name says that something is left out, but not to what extent. */
    private static final Set<String> WITHOUT = Set.of("free", "vegan", "vegetarian");

    private final Origins origins;
    private final List<Phrase> words;

    private OriginWords(List<String> cells) {
        this.origins = OriginList.of(cells.get(0)).orElseThrow();
        this.words = ResourceTable.words(cells.get(1)).stream().map(Phrase::of).toList();
    }

    /** Of the first line of the table that fits; unknown when none does. */
    public static Origins of(String name) {
        Phrase text = Phrase.of(name);
        return ALL.stream()
                .filter(line -> line.words.stream().anyMatch(text::holds))
                .findFirst()
                .map(line -> text.hasOneOf(WITHOUT) ? doubted(line.origins) : line.origins)
                .orElse(Origins.UNKNOWN);
    }

    private static Origins doubted(Origins told) {
        var doubtful = EnumSet.noneOf(Origin.class);
        doubtful.addAll(told.certain());
        doubtful.addAll(told.doubtful());
        return Origins.of(Set.of(), doubtful);
    }
}
