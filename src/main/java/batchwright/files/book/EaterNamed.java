package batchwright.files.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Finds the lines that name an eater, also those that cannot be read and those that were undone. */
public final class EaterNamed {
    private static final Set<String> OF_AN_EATER =
            Set.of("weighed", "ate", "adopted", "ill", "travel", "creatine", "cycle");
    private static final Set<String> BEFORE_AN_EATER = Set.of("for", "of");

    private final String eater;

    public EaterNamed(String eater) {
        this.eater = eater;
    }

    /** Foods and dishes may have the same name; they do not count. In a note every word does. */
    public boolean in(String line) {
        int note = LineWords.noteIn(line);
        List<String> words = words(line.substring(0, note));
        for (int i = 1; i < words.size(); i++) {
            String before = words.get(i - 1);
            if (words.get(i).equals(eater) && (OF_AN_EATER.contains(before) || BEFORE_AN_EATER.contains(before))) {
                return true;
            }
        }
        return words(line.substring(note)).contains(eater);
    }

    private static List<String> words(String text) {
        return new ArrayList<>(List.of(text.strip().split("[\\s,.;:#]+", -1)));
    }
}
