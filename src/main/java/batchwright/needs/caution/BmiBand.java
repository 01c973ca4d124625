package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * Bands of body mass index [kg/m2] of the World Health Organization, from memory, not seen. Each ends where the next begins. They
 * are shown as information; what follows from a BMI stands in the cautions.
 */
public enum BmiBand {
    SEVERE_THINNESS("severe thinness, under 16", 0),
    MODERATE_THINNESS("moderate thinness, 16 to under 17", 16),
    MILD_THINNESS("mild thinness, 17 to under 18.5", 17),
    NORMAL("the normal range, 18.5 to under 25", 18.5),
    OVERWEIGHT("overweight, 25 to under 30", 25),
    OBESITY_1("obesity class I, 30 to under 35", 30),
    OBESITY_2("obesity class II, 35 to under 40", 35),
    OBESITY_3("obesity class III, 40 or more", 40);

    public static final Citation SOURCE =
            new Citation("WHO, bands of BMI; WHO 2004, action points for Asian adults; from memory");

    /** Public health action points for Asian adults, WHO expert consultation 2004: risk begins to rise, and is high. */
    private static final double[] ASIAN_ACTION_POINTS = {23, 27.5};

    private final String words;
    private final double least;

    BmiBand(String words, double least) {
        this.words = words;
        this.least = least;
    }

    public static BmiBand of(double bmi) {
        BmiBand found = SEVERE_THINNESS;
        for (BmiBand band : values()) {
            if (!Numerals.below(bmi, band.least)) {
                found = band;
            }
        }
        return found;
    }

    /** The highest of the action points for Asian adults that is reached. */
    public static OptionalDouble asianActionPoint(double bmi) {
        return DoubleStream.of(ASIAN_ACTION_POINTS)
                .filter(point -> !Numerals.below(bmi, point))
                .max();
    }

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Such as: the normal range, 18.5 to under 25. */
    public String words() {
        return words;
    }
}
