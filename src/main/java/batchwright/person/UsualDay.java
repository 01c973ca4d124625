package batchwright.person;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What fills the day, training and walks apart, with the physical activity level it stands for. The levels are a choice of this
 * program between the rows of COMA 1991 (from memory: sitting work 1.4, moderate 1.6, heavy 1.7 without active leisure) and FAO/WHO/UNU 2004.
 */
public enum UsualDay {
    CHAIR_BOUND(1.20, "hardly on your feet"),
    SITTING(1.40, "mostly sitting, such as at a desk"),
    STANDING(1.55, "on your feet or walking a little, such as in a shop"),
    CARRYING(1.70, "moving loads, such as in a warehouse"),
    HEAVY(1.90, "heavy work with the whole body");

    private final double pal;
    private final String meaning;

    UsualDay(double pal, String meaning) {
        this.pal = pal;
        this.meaning = meaning;
    }

    public double pal() {
        return pal;
    }

    public String meaning() {
        return meaning;
    }

    /** As files say it. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<UsualDay> of(String label) {
        return Arrays.stream(values()).filter(day -> day.label().equals(label)).findFirst();
    }
}
