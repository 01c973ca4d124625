package batchwright.person;

import java.util.OptionalInt;

/**
 * How many containers a day are for one meal.
 *
 * @param least at least so many
 * @param most at most so many; empty when nobody said
 */
public record TimesADay(int least, OptionalInt most) {
    public static final TimesADay NOT_SAID = new TimesADay(0, OptionalInt.empty());

    public TimesADay {
        if (least < 0 || (most.isPresent() && least > most.getAsInt())) {
            throw new IllegalArgumentException("least (" + least + ") must be from 0 to most (" + most + ").");
        }
    }

    public static TimesADay of(int least, int most) {
        return new TimesADay(least, OptionalInt.of(most));
    }
}
