package batchwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The words of a text: letters, digits and %, in small letters. Everything else only separates them. */
public final class Words {
    private static final int SHORT = 3;

    private Words() {}

    public static List<String> of(String text) {
        var words = new ArrayList<String>();
        String small = text.toLowerCase(Locale.ROOT);
        int start = 0;
        for (int i = 0; i <= small.length(); i++) {
            if (i == small.length() || !isInside(small.charAt(i))) {
                if (i > start) {
                    words.add(small.substring(start, i));
                }
                start = i + 1;
            }
        }
        return words;
    }

    /** Whether two words are the same apart from singular and plural: egg, eggs. */
    public static boolean areOne(String word, String other) {
        return word.equals(other) || singular(word).equals(singular(other));
    }

    private static boolean isInside(char c) {
        return c == '%' || Character.isLetterOrDigit(c);
    }

    /**
     * A form that is the same for one and for many: berry, berries; tomato, tomatoes; peach, peaches; leaf, leaves. It is only
     * for comparing, and need not be a word: cookie, cookies give cooky.
     */
    public static String singular(String word) {
        String one = word.length() > SHORT && word.endsWith("s") && !word.endsWith("ss") && !word.endsWith("us")
                ? word.substring(0, word.length() - 1)
                : word;
        if (one.length() <= SHORT) {
            return one;
        }
        String start = one.substring(0, one.length() - 2);
        if (one.endsWith("ie")) {
            return start + "y";
        }
        if (one.endsWith("oe")
                || one.endsWith("che")
                || one.endsWith("she")
                || one.endsWith("sse")
                || one.endsWith("xe")) {
            return one.substring(0, one.length() - 1);
        }
        boolean leaf = one.endsWith("eave") || one.endsWith("oave") || one.endsWith("alve");
        return leaf ? start + "f" : one;
    }
}
