package batchwright.reference.find;

import java.util.ArrayList;
import java.util.List;

/**
 * A food with the words that it can be found by, and how much each of them says about what the food is.
 *
 * @param ours a food of the catalogue
 * @param weights beside words: 1 for what it is, less for what is said behind commas, 0 for its group
 * @param head index in words of what it is: rice in white rice
 * @param length letters of the name
 */
record IndexedFood<T>(T food, boolean ours, List<Word> words, List<Double> weights, int head, int length) {
    static final double CLASS = 0.15;
    private static final double NAME = 1;
    private static final double BEHIND = 0.35;
    private static final double IN_BRACKETS = 0.05;
    private static final double PLAIN = 0.02;

    /**
     * @param name what it is, then behind commas what kind of it
     * @param besides other words that it is found by
     */
    static <T> IndexedFood<T> of(T food, boolean ours, String name, String besides, Vocabulary vocabulary) {
        var reading = new Reading(vocabulary, !ours);
        reading.name(name);
        vocabulary.learn(besides).forEach(word -> reading.put(word, 0));
        vocabulary.count(reading.words);
        return new IndexedFood<>(food, ours, reading.words, reading.weights, Math.max(0, reading.head), name.length());
    }

    /** The last word that says what it is, before one that only adds to it. */
    static int headOf(List<Word> part) {
        int end = 1;
        while (end < part.size() && !part.get(end).adds()) {
            end++;
        }
        int head = Math.min(end, part.size()) - 1;
        while (head > 0 && part.get(head).isSoft()) {
            head--;
        }
        return head;
    }

    /** A name that is being read. */
    private static final class Reading {
        private final Vocabulary vocabulary;
        private final boolean mayNameClass;
        private final List<Word> words = new ArrayList<>();
        private final List<Double> weights = new ArrayList<>();
        private int head = -1;

        Reading(Vocabulary vocabulary, boolean mayNameClass) {
            this.vocabulary = vocabulary;
            this.mayNameClass = mayNameClass;
        }

        void name(String name) {
            int start = 0;
            for (int comma = name.indexOf(','); comma >= 0; comma = name.indexOf(',', start)) {
                part(name.substring(start, comma), start == 0);
                start = comma + 1;
            }
            part(name.substring(start), false);
        }

        private void part(String part, boolean firstOfSeveral) {
            int open = part.indexOf('(');
            List<Word> said = vocabulary.learn(open < 0 ? part : part.substring(0, open));
            boolean isClass = mayNameClass && firstOfSeveral && !said.isEmpty() && CookWords.isClass(said.get(0));
            if (head < 0 && !isClass && !said.isEmpty()) {
                head = words.size() + headOf(said);
                putAll(said, NAME);
            } else {
                putAll(said, isClass ? CLASS : BEHIND);
            }
            if (open >= 0) {
                vocabulary.learn(part.substring(open)).forEach(word -> put(word, IN_BRACKETS));
            }
        }

        /** Words after one that only adds to the food say little (with its skin), those after without nothing. */
        private void putAll(List<Word> part, double weight) {
            boolean adds = false;
            for (Word word : part) {
                if (word.text().equals("without")) {
                    return;
                }
                adds |= word.adds();
                put(word, adds ? Math.min(weight, IN_BRACKETS) : weight);
            }
        }

        void put(Word word, double weight) {
            words.add(word);
            weights.add(word.isPlain() ? Math.min(weight, PLAIN) : weight);
        }
    }
}
