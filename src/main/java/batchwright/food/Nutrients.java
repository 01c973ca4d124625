package batchwright.food;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/**
 * Exact decimal amounts of nutrients. A nutrient that some food has no value for, or only a least value, is "not complete":
 * its amount is what is known, and the true amount is at least that. Unknown is never read as zero.
 */
public final class Nutrients {
    public static final Nutrients NONE = new Nutrients(new EnumMap<>(Nutrient.class), EnumSet.noneOf(Nutrient.class));
    private static final BigDecimal PER = BigDecimal.valueOf(100);

    private final EnumMap<Nutrient, BigDecimal> known;
    private final EnumSet<Nutrient> incomplete;

    private Nutrients(EnumMap<Nutrient, BigDecimal> known, EnumSet<Nutrient> incomplete) {
        this.known = known;
        this.incomplete = incomplete;
    }

    /** The values of one food; every nutrient that is left out is taken as unknown. */
    public static Nutrients of(Map<Nutrient, BigDecimal> values) {
        return of(values, Set.of());
    }

    /** @param atLeast those of the values that may be more, such as carbohydrate with fibre when the fibre is not known */
    public static Nutrients of(Map<Nutrient, BigDecimal> values, Set<Nutrient> atLeast) {
        var known = new EnumMap<Nutrient, BigDecimal>(Nutrient.class);
        known.putAll(values);
        var incomplete = EnumSet.allOf(Nutrient.class);
        incomplete.removeAll(values.keySet());
        incomplete.addAll(atLeast);
        return new Nutrients(known, incomplete);
    }

    /** The known amount, in the nutrient's unit; zero when nothing is known. */
    public BigDecimal get(Nutrient nutrient) {
        return known.getOrDefault(nutrient, BigDecimal.ZERO);
    }

    /** Whether there is a value at all, be it only a least one. */
    public boolean isKnown(Nutrient nutrient) {
        return known.containsKey(nutrient);
    }

    public boolean isComplete(Nutrient nutrient) {
        return !incomplete.contains(nutrient);
    }

    public Nutrients plus(Nutrients other) {
        var sum = new EnumMap<>(known);
        other.known.forEach((nutrient, amount) -> sum.merge(nutrient, amount, BigDecimal::add));
        var missing = EnumSet.copyOf(incomplete);
        missing.addAll(other.incomplete);
        return new Nutrients(sum, missing);
    }

    public Nutrients times(BigDecimal factor) {
        var scaled = new EnumMap<Nutrient, BigDecimal>(Nutrient.class);
        known.forEach((nutrient, amount) -> scaled.put(nutrient, amount.multiply(factor)));
        return new Nutrients(scaled, incomplete);
    }

    /** One of so many equal shares, to 16 digits. */
    public Nutrients dividedBy(int shares) {
        BigDecimal divisor = BigDecimal.valueOf(shares);
        var share = new EnumMap<Nutrient, BigDecimal>(Nutrient.class);
        known.forEach((nutrient, amount) -> share.put(nutrient, amount.divide(divisor, MathContext.DECIMAL64)));
        return new Nutrients(share, incomplete);
    }

    /** With all that is known of one more. */
    Nutrients with(Nutrient nutrient, BigDecimal amount) {
        var more = new EnumMap<>(known);
        more.put(nutrient, amount);
        var missing = EnumSet.copyOf(incomplete);
        missing.remove(nutrient);
        return new Nutrients(more, missing);
    }

    /** With so much less of one nutrient; whether the amount is complete does not change. */
    public Nutrients less(Nutrient nutrient, BigDecimal amount) {
        var left = new EnumMap<>(known);
        left.put(nutrient, get(nutrient).subtract(amount));
        return new Nutrients(left, incomplete);
    }

    /** What these grams hold, when this is given per 100 g. */
    public Nutrients ofGrams(BigDecimal grams) {
        return times(grams.divide(PER));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Nutrients that && known.equals(that.known) && incomplete.equals(that.incomplete);
    }

    @Override
    public int hashCode() {
        return known.hashCode();
    }

    @Override
    public String toString() {
        return known.toString();
    }
}
