package batchwright.app;

import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import java.math.BigDecimal;

/**
 * A sum of money as the user types it; the kitchen says later which currency it is in.
 *
 * @param major in units of the currency, at least 0
 */
public record TypedSum(BigDecimal major) {
    /** @throws Refused when it has more decimals than the currency */
    Money in(Currency currency) {
        return currency.money(major)
                .orElseThrow(() -> Refused.because(
                        "the budget cannot be \"" + major.toPlainString() + "\"",
                        "All prices are in " + currency + ", which has "
                                + (currency.digits() == 0 ? "no" : "at most " + currency.digits()) + " decimals."));
    }
}
