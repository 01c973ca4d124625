package batchwright.needs.evidence;

/** Where a number comes from, short enough to print beside it. */
public record Citation(String text) {
    /** Widely used, without one scientific source. */
    public static Citation commonPractice(String what) {
        return new Citation("common practice: " + what);
    }

    /** A limit set by this program, and what it was set by. */
    public static Citation designChoice(String why) {
        return new Citation("choice of this program: " + why);
    }

    @Override
    public String toString() {
        return text;
    }
}
