package batchwright.text;

import java.util.Collection;

/**
 * How well words fit one that was typed: the word itself or its singular or plural, then a word that it begins, then, where
 * slips are overlooked, a word that is one slip away. Fewer points are better.
 */
public final class WordFit {
    /** The points of a word that does not fit at all. */
    public static final int NONE = 100;

    private static final int SAME = 0;
    private static final int BEGINS = 3;
    private static final int SLIP = 9;
    private static final int LONG_ENOUGH_FOR_A_SLIP = 4;

    private final String typed;
    private final String singular;

    /** @param typed in small letters, as {@link Words#of} gives it */
    public WordFit(String typed) {
        this.typed = typed;
        this.singular = Words.singular(typed);
    }

    /** What every word that fits without a slip begins with. */
    public String stem() {
        int length = 0;
        int most = Math.min(typed.length(), singular.length());
        while (length < most && typed.charAt(length) == singular.charAt(length)) {
            length++;
        }
        // berry, berries and leaf, leaves differ in the last letter of the singular
        return typed.substring(0, length < singular.length() || length < 2 ? length : length - 1);
    }

    /** Points of one word, without overlooking a slip. */
    public int points(String word) {
        if (word.equals(typed) || Words.singular(word).equals(singular)) {
            return SAME;
        }
        return word.startsWith(typed) ? BEGINS : NONE;
    }

    /** Points of one word, with at most one slip overlooked in words of four letters or more. */
    public int pointsWithSlip(String word) {
        int points = points(word);
        return points == NONE && isOneSlip(word) ? SLIP : points;
    }

    private boolean isOneSlip(String word) {
        String other = Words.singular(word);
        return typed.length() >= LONG_ENOUGH_FOR_A_SLIP
                && other.length() >= LONG_ENOUGH_FOR_A_SLIP - 1
                && Math.abs(other.length() - singular.length()) <= 1
                && NearestName.slips(singular, other) <= 1;
    }

    /** Points of the word that fits best. */
    public int best(Collection<String> words, boolean overlookSlip) {
        int best = NONE;
        for (String word : words) {
            best = Math.min(best, overlookSlip ? pointsWithSlip(word) : points(word));
        }
        return best;
    }

    @Override
    public String toString() {
        return typed;
    }
}
