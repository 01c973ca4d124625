package batchwright.reference.find;

import batchwright.text.NearestName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Words that no food has, as they were probably meant: with a slip or two mended, written apart, or as one. */
final class Spelling {
    private static final int LETTERS_FOR_A_SLIP = 4;
    private static final int LETTERS_FOR_TWO_SLIPS = 7;
    private static final int SHORT = 3;

    private final Vocabulary vocabulary;
    private final Collection<String> others;

    /** @param others words that are known besides those of the foods */
    Spelling(Vocabulary vocabulary, Collection<String> others) {
        this.vocabulary = vocabulary;
        this.others = others;
    }

    List<String> mended(List<String> words) {
        var mended = new ArrayList<String>();
        for (int i = 0; i < words.size(); i++) {
            String word = words.get(i);
            String joined = i + 1 < words.size() ? word + words.get(i + 1) : "";
            if (!isKnown(word) && vocabulary.has(joined)) {
                mended.add(joined);
                i++;
            } else {
                mended.addAll(mended(word));
            }
        }
        return mended;
    }

    private List<String> mended(String word) {
        return isKnown(word) || vocabulary.hasBeginning(word)
                ? List.of(word)
                : apart(word).or(() -> near(word).map(List::of)).orElse(List.of(word));
    }

    private boolean isKnown(String word) {
        return vocabulary.has(word) || others.contains(word) || CookWords.isSoft(word);
    }

    /** Two words that more than one food holds: chickenbreast. */
    private Optional<List<String>> apart(String word) {
        for (int at = SHORT; at <= word.length() - SHORT; at++) {
            String first = word.substring(0, at);
            String second = Word.form(word.substring(at));
            if (vocabulary.foodsWith(first) > 1 && vocabulary.foodsWith(second) > 1) {
                return Optional.of(List.of(first, second));
            }
        }
        return Optional.empty();
    }

    private Optional<String> near(String word) {
        int most = mostSlips(word);
        return Stream.concat(vocabulary.words().stream().map(Word::text), others.stream())
                .filter(w -> w.length() >= SHORT && w.chars().noneMatch(Character::isDigit))
                .filter(w -> Math.abs(w.length() - word.length()) <= most && NearestName.slips(w, word) <= most)
                .min(Comparator.comparingInt((String w) -> NearestName.slips(w, word))
                        .thenComparingInt(w -> w.charAt(0) == word.charAt(0) ? 0 : 1)
                        .thenComparingInt(w -> -vocabulary.foodsWith(w))
                        .thenComparing(Comparator.naturalOrder()));
    }

    private static int mostSlips(String word) {
        if (word.length() < LETTERS_FOR_A_SLIP) {
            return 0;
        }
        return word.length() < LETTERS_FOR_TWO_SLIPS ? 1 : 2;
    }
}
