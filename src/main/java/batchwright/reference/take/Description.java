package batchwright.reference.take;

import batchwright.text.Words;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * A description of USDA SR28 taken apart: "Beans, black (turtle), mature seeds, raw".
 *
 * @param parts between commas, without what stands in brackets
 * @param words all words, in small letters
 */
record Description(String text, List<String> parts, Set<String> words) {
    static Description of(String text) {
        return new Description(text, parts(text), Set.copyOf(new HashSet<>(Words.of(text))));
    }

    private static List<String> parts(String text) {
        var parts = new ArrayList<String>();
        var part = new StringBuilder();
        int depth = 0;
        for (char c : (text + ",").toCharArray()) {
            if (c == '(') {
                depth++;
            } else if (c == ')') {
                depth = Math.max(0, depth - 1);
            } else if (c == ',' && depth == 0) {
                String words = String.join(" ", part.toString().strip().split("\\s+", -1));
                if (!words.isEmpty()) {
                    parts.add(words);
                }
                part.setLength(0);
            } else if (depth == 0) {
                part.append(c);
            }
        }
        return parts.isEmpty() ? List.of(text) : parts;
    }

    String small() {
        return text.toLowerCase(Locale.ROOT);
    }

    /** Whether one of these words, separated by blanks, is among the words. */
    boolean has(String oneOf) {
        return Words.of(oneOf).stream().anyMatch(words::contains);
    }

    boolean startsWith(String start) {
        return small().startsWith(start);
    }
}
