package batchwright.plan;

import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import java.util.Optional;

/**
 * One of a smallest set of rules that cannot all hold.
 *
 * @param rule the rule's name, as in the audit
 * @param says the rule in the words of the user's files, with its figure
 * @param cure the smallest change of this rule alone that makes a plan possible; empty when it alone cannot
 * @param remedy of a cure, which was tried and leads to a plan; without a cure, what may help but was not tried; empty when nothing is
 *     known
 * @param needed whether it is proven that the others alone can all hold; else the set may be larger than need be
 */
public record Clash(String rule, String says, String cure, Optional<Remedy> remedy, boolean needed) {
    /** One that is proven to be needed. */
    public Clash(String rule, String says, String cure, Optional<Remedy> remedy) {
        this(rule, says, cure, remedy, true);
    }

    /** Whether a change of this rule alone that makes a plan possible is known. */
    public boolean isCured() {
        return !cure.isEmpty() && remedy.isPresent();
    }

    /** The cheapest plan that keeps every other rule costs more than the budget. */
    public static Clash budget(Money budget, Money cheapest, Currency currency) {
        String raised = currency.text(cheapest);
        return new Clash(
                "budget",
                "the checkout cost stays within " + currency.text(budget),
                "raise the budget to " + raised + ", the cost of the cheapest plan",
                Optional.of(new Remedy.RaiseBudget(Optional.of(cheapest), currency)));
    }
}
