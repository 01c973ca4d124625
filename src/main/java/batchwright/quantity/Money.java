package batchwright.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** An amount of money [minor units: cents]; never negative, always whole. */
public record Money(long minor) implements Comparable<Money> {
    public static final Money ZERO = new Money(0);
    private static final int MINOR_DIGITS = 2;

    public Money {
        if (minor < 0) {
            throw new IllegalArgumentException("minor (" + minor + ") must be >= 0.");
        }
    }

    /** From a decimal such as 12.34; more than two decimals are refused. */
    public static Money of(BigDecimal major) {
        return new Money(major.movePointRight(MINOR_DIGITS).longValueExact());
    }

    public Money plus(Money other) {
        return new Money(Math.addExact(minor, other.minor));
    }

    public Money times(int count) {
        return new Money(Math.multiplyExact(minor, count));
    }

    /** In major units, two decimals. */
    public BigDecimal major() {
        return BigDecimal.valueOf(minor, MINOR_DIGITS);
    }

    /** The part of this price that an amount of a pack is worth, in minor units with four decimals. */
    public BigDecimal shareOf(BigDecimal amount, BigDecimal whole) {
        return BigDecimal.valueOf(minor).multiply(amount).divide(whole, 4, RoundingMode.HALF_UP);
    }

    /** The same rounded up to the cent. */
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

    /** As people write it: 12.34. */
    @Override
    public String toString() {
        return major().toPlainString();
    }
}
