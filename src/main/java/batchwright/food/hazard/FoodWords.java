package batchwright.food.hazard;

import batchwright.food.Food;
import batchwright.food.Phrase;
import batchwright.text.ResourceTable;
import java.util.List;

/** Which foods a rule is about, by phrases of their short name, name and source description. */
record FoodWords(List<Phrase> any, List<Phrase> unless) {
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
        List<Phrase> texts = List.of(Phrase.of(food.id()), Phrase.of(food.name()), Phrase.of(food.description()));
        return holdAny(texts, any) && !holdAny(texts, unless);
    }

    private static boolean holdAny(List<Phrase> texts, List<Phrase> looked) {
        return texts.stream().anyMatch(text -> looked.stream().anyMatch(text::holds));
    }
}
