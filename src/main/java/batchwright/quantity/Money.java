package batchwright.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An amount of money [minor units, such as cents]; never negative, always whole. How many of them make a unit, and how it is
 * written, the {@link Currency} knows; all amounts of a kitchen are in one.
 */
public record Money(long minor) implements Comparable<Money> {
    public static final Money ZERO = new Money(0);

    public Money {
        if (minor < 0) {
            throw new IllegalArgumentException("minor (" + minor + ") must be >= 0.");
        }
    }

    public Money plus(Money other) {
        return new Money(Math.addExact(minor, other.minor));
    }

    /** @throws IllegalArgumentException when the other is more than this */
    public Money minus(Money other) {
        return new Money(minor - other.minor);
    }

    public Money times(int count) {
        return new Money(Math.multiplyExact(minor, count));
    }

    /** To the minor unit, half up. */
    public static Money rounded(BigDecimal minor) {
        return new Money(minor.setScale(0, RoundingMode.HALF_UP).longValueExact());
    }

    /** The part of this price that an amount of a pack is worth, in minor units with four decimals. */
    public BigDecimal shareOf(BigDecimal amount, BigDecimal whole) {
        return BigDecimal.valueOf(minor).multiply(amount).divide(whole, 4, RoundingMode.HALF_UP);
    }

    /** The same rounded up to the minor unit. */
    public Money shareUp(BigDecimal amount, BigDecimal whole) {
        return new Money(BigDecimal.valueOf(minor)
                .multiply(amount)
                .divide(whole, 0, RoundingMode.CEILING)
                .longValueExact());
    }

    @Override
    public int compareTo(Money other) {
        return Long.compare(minor, other.minor);
    }

    /** For those who look for faults; people are shown what the {@link Currency} makes of it. */
    @Override
    public String toString() {
        return minor + " minor units";
    }
}
