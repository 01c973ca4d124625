package batchwright.limit;

import java.util.OptionalInt;

/**
 * At least and at most so much, in whole units.
 *
 * @param least 0 when there is no least
 * @param most empty when there is no most
 */
public record Range(int least, OptionalInt most) {
    /** A range that every amount keeps. */
    public static final Range ANY = atLeast(0);

    public static Range atLeast(int least) {
        return new Range(least, OptionalInt.empty());
    }

    public static Range atMost(int most) {
        return between(0, most);
    }

    public static Range between(int least, int most) {
        return new Range(least, OptionalInt.of(most));
    }

    public boolean isAny() {
        return equals(ANY);
    }

    public boolean hasLeast() {
        return least > 0;
    }

    /** Infinite when there is no most. */
    public double mostOrInfinity() {
        return most.isPresent() ? most.getAsInt() : Double.POSITIVE_INFINITY;
    }

    /** Wider by so much at each end that it has; a least never falls below 0. */
    public Range wider(int below, int above) {
        return new Range(Math.max(0, least - below), most.isPresent() ? OptionalInt.of(most.getAsInt() + above) : most);
    }

    public boolean holds(int amount) {
        return least <= amount && amount <= mostOrInfinity();
    }

    /** Whether whatever keeps the other keeps this. */
    public boolean holds(Range other) {
        return least <= other.least && other.mostOrInfinity() <= mostOrInfinity();
    }

    /** At least 28 g; at most 2300 mg; 3149 to 3343 kcal. */
    public String says(String unit) {
        return says() + " " + unit;
    }

    /** At least 28; at most 2300; 3149 to 3343. */
    public String says() {
        if (most.isEmpty()) {
            return "at least " + least;
        }
        return least == 0 ? "at most " + most.getAsInt() : least + " to " + most.getAsInt();
    }
}
