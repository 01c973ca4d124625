package batchwright.food.hazard;

import batchwright.food.Food;
import batchwright.food.Phrase;
import batchwright.text.ResourceTable;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Which foods a rule is about, by phrases of their short name, name and source description. */
record FoodWords(List<Phrase> any, List<Phrase> unless) {
    /** Every rule looks at the same few hundred texts. */
    private static final Map<String, Phrase> TEXTS = new ConcurrentHashMap<>();

    private static final int MOST_TEXTS = 10_000;

    FoodWords {
        any = List.copyOf(any);
        unless = List.copyOf(unless);
    }

    static FoodWords of(String any, String unless) {
        return new FoodWords(phrases(any), phrases(unless));
    }

    private static List<Phrase> phrases(String cell) {
        return ResourceTable.words(cell).stream().map(Phrase::of).toList();
    }

    boolean fit(Food food) {
        List<Phrase> texts = List.of(text(food.id()), text(food.name()), text(food.description()));
        return holdAny(texts, any) && !holdAny(texts, unless);
    }

    private static Phrase text(String written) {
        if (TEXTS.size() > MOST_TEXTS) {
            TEXTS.clear();
        }
        return TEXTS.computeIfAbsent(written, Phrase::of);
    }

    private static boolean holdAny(List<Phrase> texts, List<Phrase> looked) {
        return texts.stream().anyMatch(text -> looked.stream().anyMatch(text::holds));
    }
}
