package batchwright.answer;

import batchwright.explain.KnownCost;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.util.OptionalLong;

/**
 * By how much one cost is above another, as far as both are known [minor units].
 *
 * @param least it is no less
 * @param most it is no more; empty when there is no such bound, or no plan at all
 */
public record CostChange(long least, OptionalLong most, boolean noPlan) {
    private static final String UNKNOWN = "?";
    private static final String AT_LEAST = ">=";
    private static final String AT_MOST = "<=";

    /** What a looser rule saves: never less than nothing. */
    public static CostChange saved(KnownCost base, KnownCost looser) {
        long least =
                looser.most().map(most -> base.least().minor() - most.minor()).orElse(0L);
        OptionalLong most = base.most().stream()
                .mapToLong(b -> b.minor() - looser.least().minor())
                .findFirst();
        return new CostChange(Math.max(0, least), most, false);
    }

    /** What a tighter rule costs: never less than nothing. */
    public static CostChange added(KnownCost base, KnownCost tighter) {
        if (tighter.noPlan()) {
            return new CostChange(0, OptionalLong.empty(), true);
        }
        long least = base.most().map(b -> tighter.least().minor() - b.minor()).orElse(0L);
        OptionalLong most = tighter.most().stream()
                .mapToLong(t -> Math.max(0, t.minor() - base.least().minor()))
                .findFirst();
        return new CostChange(Math.max(0, least), most, false);
    }

    boolean proven() {
        return noPlan || (most.isPresent() && most.getAsLong() == least);
    }

    /** Proven to be nothing. */
    public boolean isNothing() {
        return !noPlan && proven() && least == 0;
    }

    /** For a table of savings: what is surely saved matters most. */
    public String asSaving(Currency currency) {
        if (proven() || least > 0) {
            return (proven() ? "" : AT_LEAST) + currency.text(new Money(least));
        }
        return most.isPresent() ? AT_MOST + currency.text(new Money(most.getAsLong())) : UNKNOWN;
    }

    /** For a table of costs: what it costs at most matters most. */
    public String asCost(Currency currency) {
        if (noPlan) {
            return "no plan";
        }
        if (most.isPresent()) {
            return (proven() ? "" : AT_MOST) + currency.text(new Money(most.getAsLong()));
        }
        return least > 0 ? AT_LEAST + currency.text(new Money(least)) : UNKNOWN;
    }

    public static BigDecimal percent(long part, long whole) {
        return BigDecimal.valueOf(part)
                .movePointRight(2)
                .divide(BigDecimal.valueOf(Math.max(1, whole)), 1, java.math.RoundingMode.HALF_UP);
    }
}
