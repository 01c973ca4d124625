package batchwright.person;

import java.util.Locale;

/**
 * A multiplier of resting energy in common use. No study stands behind the five figures, and 1.2 lies below every PAL that was
 * measured on people who are up and about. The words for them are ours.
 */
public enum CommonMultiplier implements PhysicalActivity {
    DESK(1.2, "at a desk, hardly any walking or sport"),
    LIGHT(1.375, "some walking or light sport in the week"),
    MEDIUM(1.55, "sport on about half of the days"),
    HARD(1.725, "hard sport on most days"),
    VERY_HARD(1.9, "hard sport every day, or heavy work and sport");

    /** What stands before the word in a profile. */
    public static final String PREFIX = "multiplier";

    private final double pal;
    private final String meaning;

    CommonMultiplier(double pal, String meaning) {
        this.pal = pal;
        this.meaning = meaning;
    }

    @Override
    public double pal() {
        return pal;
    }

    /** The word alone, such as light. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String meaning() {
        return meaning;
    }

    @Override
    public String label() {
        return PREFIX + " " + word();
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.multiplier(this);
    }
}
