package batchwright.explain;

import java.util.List;

/** Counts and lists as people read them. */
final class Phrases {
    private static final int MOST_NAMED = 3;

    private Phrases() {}

    static String count(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    /** The first few names, and how many more there are. */
    static String some(List<String> names) {
        String first = String.join(", ", names.subList(0, Math.min(MOST_NAMED, names.size())));
        return names.size() > MOST_NAMED ? first + " and " + (names.size() - MOST_NAMED) + " more" : first;
    }
}
