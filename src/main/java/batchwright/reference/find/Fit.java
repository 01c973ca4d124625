package batchwright.reference.find;

import java.util.List;

/**
 * How well foods fit one wording. The figures are our choice: they were set by hand on 399 of the graded queries of {@code
 * FoodsFoundTest}, and tried on others.
 */
final class Fit {
    private static final double BEGINS = 0.75;
    private static final int LETTERS_OF_A_BEGINNING = 3;

    /** Weights of what was asked for: what it is 1, what kind of it, what says little. */
    private static final double KIND = 0.6;

    private static final double SOFT = 0.15;
    private static final double UNKNOWN = 0.6;

    /** What a food gains by saying little else, by being the thing itself, by being in the catalogue. */
    private static final double SAYS_LITTLE_ELSE = 0.5;

    private static final double IS_IT = 0.5;
    private static final double IS_A_WORD_OF_IT = 0.7;
    private static final double OURS = 0.2;

    /** What it loses by each state that was not asked for, at most so much, and by each letter. */
    private static final double STATE = 0.15;

    private static final double ALL_STATES = 0.45;
    private static final double LETTER = 0.0005;

    private final Query asked;
    /** For each word asked for and each word of the vocabulary, 0 to 1. */
    private final double[][] alike;

    private final double[] weights;
    private final double all;

    Fit(Query asked, Vocabulary vocabulary) {
        this.asked = asked;
        int words = asked.words().size();
        this.alike = new double[words][vocabulary.words().size()];
        this.weights = new double[words];
        double sum = 0;
        for (int i = 0; i < words; i++) {
            weights[i] = weight(i, vocabulary);
            sum += weights[i];
            for (Word word : vocabulary.words()) {
                alike[i][word.number()] = alike(asked.words().get(i), word.text());
            }
        }
        this.all = sum;
    }

    private double weight(int i, Vocabulary vocabulary) {
        String word = asked.words().get(i);
        double rarity = Math.sqrt(vocabulary.rarity(word));
        if (CookWords.isSoft(word) || CookWords.endsTheFood(word)) {
            return SOFT * rarity;
        }
        return (i == asked.head() ? 1 : KIND) * (vocabulary.has(word) ? 1 : UNKNOWN) * rarity;
    }

    private static double alike(String typed, String word) {
        if (typed.equals(word)) {
            return 1;
        }
        boolean begins = typed.length() >= LETTERS_OF_A_BEGINNING && word.startsWith(typed);
        return begins && !CookWords.isSoft(typed) ? BEGINS : 0;
    }

    Query.Wording wording() {
        return asked.wording();
    }

    /** Whether the food has every word that says something. */
    boolean hasAll(IndexedFood<?> food) {
        List<String> words = asked.words();
        for (int i = 0; i < words.size(); i++) {
            boolean says = !CookWords.isSoft(words.get(i)) && !CookWords.endsTheFood(words.get(i));
            if (says && best(i, food) == 0) {
                return false;
            }
        }
        return true;
    }

    /** 0 to 1: the share of what was asked for that the food has. */
    double coverage(IndexedFood<?> food) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += best(i, food) * weights[i];
        }
        return sum / all;
    }

    private double best(int i, IndexedFood<?> food) {
        double best = 0;
        for (Word word : food.words()) {
            best = Math.max(best, alike[i][word.number()]);
        }
        return best;
    }

    /** More is better. */
    double score(IndexedFood<?> food) {
        double coverage = coverage(food);
        return coverage * coverage * (1 + SAYS_LITTLE_ELSE * shareAskedFor(food) + IS_IT * isIt(food))
                + (food.ours() ? OURS : 0)
                - Math.min(ALL_STATES, STATE * statesNotAskedFor(food))
                - asked.wording().cost()
                - LETTER * food.length();
    }

    /** 0 to 1: how much of what the food's name says was asked for. */
    private double shareAskedFor(IndexedFood<?> food) {
        double said = 0;
        double wanted = 0;
        for (int w = 0; w < food.weights().size(); w++) {
            said += food.weights().get(w);
            wanted += food.weights().get(w) * askedFor(food.words().get(w));
        }
        return said == 0 ? 0 : wanted / said;
    }

    private int statesNotAskedFor(IndexedFood<?> food) {
        int states = 0;
        for (int w = 0; w < food.weights().size(); w++) {
            Word word = food.words().get(w);
            if (word.isState() && food.weights().get(w) >= IndexedFood.CLASS && askedFor(word) == 0) {
                states++;
            }
        }
        return states;
    }

    private double askedFor(Word word) {
        double best = 0;
        for (double[] of : alike) {
            best = Math.max(best, of[word.number()]);
        }
        return best;
    }

    /** 0 to 1: whether what the food is, is what was asked for. */
    private double isIt(IndexedFood<?> food) {
        double best = 0;
        for (int i = 0; !food.words().isEmpty() && i < alike.length; i++) {
            double head = alike[i][food.words().get(food.head()).number()];
            best = Math.max(best, head * (i == asked.head() ? 1 : IS_A_WORD_OF_IT));
        }
        return best;
    }
}
