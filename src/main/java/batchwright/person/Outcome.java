package batchwright.person;

import java.util.Locale;

/** What is done about a goal, from mild to strict. */
public enum Outcome {
    PLAN,
    /** Planned, with a caution. */
    WARN,
    /** Not planned until one more fact is known. */
    ASK,
    REFUSE;

    static Outcome of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }

    public boolean stops() {
        return this == ASK || this == REFUSE;
    }

    public Outcome strictest(Outcome other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
