package batchwright.reference.find;

import java.util.ArrayList;
import java.util.List;

/**
 * What was asked for, in one wording.
 *
 * @param words in the form in which they are compared, without the container that the food is bought in
 * @param head index of what it is: onion in red onion
 * @param wording how it came about
 */
record Query(List<String> words, int head, Wording wording) {
    private static final String CANNED = "canned";

    /** How words came about, and how much less they count. */
    enum Wording {
        /** As typed, but for slips. */
        TYPED(0),
        /** By another name of the same food. */
        OTHER_NAME(0.02),
        /** By the name of the nearest food. */
        NEAREST(0.25);

        private final double cost;

        Wording(double cost) {
            this.cost = cost;
        }

        double cost() {
            return cost;
        }
    }

    static Query of(List<String> typed, Wording wording) {
        List<String> words = withoutContainer(typed);
        int head = 1;
        while (head < words.size() && !CookWords.endsTheFood(words.get(head))) {
            head++;
        }
        head = Math.min(head, words.size()) - 1;
        while (head > 0 && (CookWords.isSoft(words.get(head)) || CookWords.isState(words.get(head)))) {
            head--;
        }
        return new Query(words, Math.max(0, head), wording);
    }

    /** A tin of beans is canned beans, a bag of spinach is spinach. */
    private static List<String> withoutContainer(List<String> typed) {
        int last = typed.size() - 1;
        if (last > 1 && CookWords.isContainer(typed.get(0)) && typed.get(1).equals("of")) {
            return canned(typed.subList(2, typed.size()), typed.get(0));
        }
        return last > 0 && isTin(typed.get(last)) ? canned(typed.subList(0, last), typed.get(last)) : typed;
    }

    private static List<String> canned(List<String> words, String container) {
        var all = new ArrayList<>(words);
        if (isTin(container)) {
            all.add(CANNED);
        }
        return all;
    }

    private static boolean isTin(String word) {
        return word.equals("tin") || word.equals("can");
    }
}
