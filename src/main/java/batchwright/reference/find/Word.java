package batchwright.reference.find;

import batchwright.text.Words;

/** A word of the foods' names, in one form for one and for many, with what it says and how many foods hold it. */
final class Word {
    private final int number;
    private final String text;
    private final boolean state;
    private final boolean adds;
    private final boolean soft;
    private final boolean plain;
    private int foods;
    private int lastFood;

    /** @param number its place in the vocabulary */
    Word(int number, String text) {
        this.number = number;
        this.text = text;
        this.state = CookWords.isState(text);
        this.adds = CookWords.endsTheFood(text);
        this.soft = CookWords.isSoft(text);
        this.plain = soft || CookWords.isPlain(text);
    }

    /** The form in which words are compared. */
    static String form(String word) {
        return Words.singular(word);
    }

    int number() {
        return number;
    }

    String text() {
        return text;
    }

    /** It makes another food of the raw one: boiled. */
    boolean isState() {
        return state;
    }

    /** What follows only adds to the food: with. */
    boolean adds() {
        return adds;
    }

    /** It says little where a name lacks it: large. */
    boolean isSoft() {
        return soft;
    }

    /** It says nothing that would not be meant without it: raw. */
    boolean isPlain() {
        return plain;
    }

    /** The number of foods that hold it. */
    int foods() {
        return foods;
    }

    /** Counts a food once, however often it holds the word. */
    void isInFood(int number) {
        if (number != lastFood) {
            lastFood = number;
            foods++;
        }
    }
}
