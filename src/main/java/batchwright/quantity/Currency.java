package batchwright.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * What all prices of a kitchen are in. Turns what people write into {@link Money} and back; nothing else does.
 *
 * @param code ISO 4217: USD, EUR
 * @param digits decimals that an amount may have: 2 of USD, 0 of JPY, 3 of KWD
 */
public record Currency(String code, int digits) {
    public static final Currency USD = new Currency("USD", 2);

    public Currency {
        if (digits < 0) {
            throw new IllegalArgumentException("digits (" + digits + ") must be >= 0.");
        }
    }

    /** As ISO 4217 has it. Empty for what is not on its list and for what has no minor unit: gold (XAU), no currency (XXX). */
    public static Optional<Currency> of(String code) {
        return java.util.Currency.getAvailableCurrencies().stream()
                .filter(listed -> listed.getCurrencyCode().equals(code))
                .filter(listed -> listed.getDefaultFractionDigits() >= 0)
                .map(listed -> new Currency(code, listed.getDefaultFractionDigits()))
                .findFirst();
    }

    /** From an amount such as 12.34; empty when it has more decimals than the currency. */
    public Optional<Money> money(BigDecimal major) {
        BigDecimal minor = major.movePointRight(digits).stripTrailingZeros();
        return minor.scale() > 0 ? Optional.empty() : Optional.of(new Money(minor.longValueExact()));
    }

    /** The smallest amount: 0.01 of USD, 1 of JPY. */
    public BigDecimal least() {
        return BigDecimal.ONE.movePointLeft(digits);
    }

    /** In units of the currency, with all its decimals. */
    public BigDecimal major(Money money) {
        return BigDecimal.valueOf(money.minor(), digits);
    }

    /** As people write it, without the code: 12.34 of USD, 1234 of JPY. */
    public String text(Money money) {
        return major(money).toPlainString();
    }

    /** A share of a minor unit is rounded half up. */
    public String text(BigDecimal minor) {
        return minor.movePointLeft(digits)
                .setScale(digits, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /** The code. */
    @Override
    public String toString() {
        return code;
    }
}
