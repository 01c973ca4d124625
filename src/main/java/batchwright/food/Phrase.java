package batchwright.food;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Words in their order, for finding one phrase in another: small letters, singular, nothing but letters counts. */
public final class Phrase {
    private static final Pattern NO_LETTERS = Pattern.compile("[^a-z]+");
    private static final int SHORT = 3;

    private final String written;
    private final List<String> words;
    private final Set<String> all;

    private Phrase(String written, List<String> words) {
        this.written = written;
        this.words = words;
        this.all = new HashSet<>(words);
    }

    public static Phrase of(String written) {
        return new Phrase(
                written.strip(),
                NO_LETTERS
                        .splitAsStream(written.toLowerCase(Locale.ROOT))
                        .filter(word -> !word.isEmpty())
                        .map(Phrase::singular)
                        .toList());
    }

    /** One after the other, with a gap that no phrase can cross. */
    static Phrase ofAll(List<String> written) {
        return new Phrase(
                String.join(" / ", written),
                written.stream()
                        .map(text -> String.join(" ", of(text).words))
                        .collect(Collectors.joining(" / "))
                        .transform(joined -> List.of(joined.split(" ", -1))));
    }

    private static String singular(String word) {
        if (word.length() <= SHORT || word.endsWith("ss") || !word.endsWith("s")) {
            return word;
        }
        return word.endsWith("ies") ? word.substring(0, word.length() - 3) + "y" : word.substring(0, word.length() - 1);
    }

    public boolean holds(Phrase other) {
        return find(other, 0) >= 0;
    }

    boolean holds(String word) {
        return all.contains(word);
    }

    boolean hasOneOf(Set<String> words) {
        return !Collections.disjoint(all, words);
    }

    /** The word at which the other phrase begins, from this one on, counted from 0; -1 when it is not there. */
    int find(Phrase other, int from) {
        if (!all.containsAll(other.words)) {
            return -1;
        }
        for (int i = from; i + other.words.size() <= words.size(); i++) {
            if (isAt(other, i)) {
                return i;
            }
        }
        return -1;
    }

    /** Whether the other phrase is there and covers the word at this place. */
    boolean covers(Phrase other, int place) {
        for (int from = Math.max(0, place - other.words.size() + 1); from <= place; from++) {
            if (isAt(other, from)) {
                return true;
            }
        }
        return false;
    }

    private boolean isAt(Phrase other, int place) {
        int end = place + other.words.size();
        return end <= words.size() && words.subList(place, end).equals(other.words);
    }

    /** The word at a place; empty before the first. */
    String word(int place) {
        return place < 0 ? "" : words.get(place);
    }

    @Override
    public String toString() {
        return written;
    }
}
