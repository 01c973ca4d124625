package batchwright.reference.find;

import batchwright.text.Words;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All words of all foods, without accents. */
final class Vocabulary {
    private static final int LAST_ASCII = 127;

    private final Map<String, Word> byForm = new HashMap<>();
    private final Map<String, Word> asWritten = new HashMap<>();
    private final List<Word> words = new ArrayList<>();
    private int foods;

    /** The words of a text in the form in which they are compared. */
    static List<String> wordsOf(String text) {
        return Words.of(withoutAccents(text)).stream().map(Word::form).toList();
    }

    private static String withoutAccents(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) > LAST_ASCII) {
                return Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
            }
        }
        return text;
    }

    /** The words of a text, new ones added. */
    List<Word> learn(String text) {
        return Words.of(withoutAccents(text)).stream()
                .map(w -> asWritten.computeIfAbsent(w, this::word))
                .toList();
    }

    private Word word(String written) {
        return byForm.computeIfAbsent(Word.form(written), form -> {
            var word = new Word(words.size(), form);
            words.add(word);
            return word;
        });
    }

    /** Counts the words of one food. */
    void count(List<Word> wordsOfFood) {
        foods++;
        wordsOfFood.forEach(word -> word.isInFood(foods));
    }

    List<Word> words() {
        return words;
    }

    Optional<Word> find(String form) {
        return Optional.ofNullable(byForm.get(form));
    }

    boolean has(String form) {
        return byForm.containsKey(form);
    }

    boolean hasBeginning(String form) {
        return has(form) || byForm.keySet().stream().anyMatch(w -> w.startsWith(form));
    }

    /** How much a word tells: the rarer the more; a word of no food as much as one of a single food. */
    double rarity(String form) {
        return Math.log(1 + (double) foods / Math.max(1, foodsWith(form)));
    }

    int foodsWith(String form) {
        return find(form).map(Word::foods).orElse(0);
    }
}
