package batchwright.food;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How the minutes of a step grow with the batch. Nothing grows in proportion: a step is a fixed time and so much per kilogram, or so
 * many loads, or heat divided by the power of the burner, or a time that does not depend on the amount.
 */
public sealed interface TimeLaw {
    /** One result for each law. */
    interface Cases<R> {
        R handWork(HandWork law);

        R loads(Loads law);

        R power(Power law);

        R byItself(ByItself law);

        R forFive(ForFive law);
    }

    <R> R match(Cases<R> cases);

    /**
     * The cook's hands: peel, chop, stir together.
     *
     * @param minutes to begin with: board and knife
     * @param perKg minutes for each kilogram as bought
     */
    record HandWork(double minutes, Map<Handled, Double> perKg) implements TimeLaw {
        public HandWork {
            perKg = Collections.unmodifiableMap(new LinkedHashMap<>(perKg));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.handWork(this);
        }
    }

    /**
     * One load after another: a pan, trays, a basket. In pans it takes the hands, which serve two pans at most; elsewhere it goes on by itself.
     *
     * @param minutes to begin with: the pan gets hot
     * @param each minutes of one load
     * @param grams what is one load, in a pan of 28 cm or on a tray of 40 x 30 cm
     * @param of what is loaded
     */
    record Loads(double minutes, double each, int grams, List<Handled> of) implements TimeLaw {
        public Loads {
            of = List.copyOf(of);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.loads(this);
        }
    }

    /**
     * Heat: bring to the boil, sweat, reduce. Goes on by itself, stirred now and then.
     *
     * @param minutes to begin with
     * @param perKg minutes for each kilogram where one kilowatt reaches the food; at twice the power half of them
     */
    record Power(double minutes, Map<Handled, Double> perKg) implements TimeLaw {
        public Power {
            perKg = Collections.unmodifiableMap(new LinkedHashMap<>(perKg));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.power(this);
        }
    }

    /** However much it is: boil pasta, simmer, rest, soak. */
    record ByItself(int minutes) implements TimeLaw {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.byItself(this);
        }
    }

    /**
     * Written for {@link Step#FOR_CONTAINERS} containers. Fewer take as long; of more, the minutes that take the hands grow in proportion,
     * which for most steps is too much, and the rest not at all, which for some is too little.
     *
     * @param handsOn the first of the minutes that take the cook's hands
     */
    record ForFive(int minutes, int handsOn) implements TimeLaw {
        public ForFive {
            if (handsOn < 0 || handsOn > minutes) {
                throw new IllegalArgumentException("handsOn (" + handsOn + ") must be 0 to minutes (" + minutes + ").");
            }
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.forFive(this);
        }
    }
}
