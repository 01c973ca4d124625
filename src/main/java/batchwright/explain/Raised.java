package batchwright.explain;

import batchwright.plan.Clash;
import batchwright.plan.PlanRequest;
import batchwright.plan.Remedy;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import java.util.Optional;

/**
 * A larger budget that a change needs besides, because no plan within the budget becomes possible by it.
 *
 * @param cost of the cheapest plan after the change, as far as it is known
 * @param currency of the cost
 */
record Raised(KnownCost cost, Currency currency) {
    PlanRequest applied(PlanRequest request) {
        return request.withBudget(cost.most());
    }

    /** Whether nothing less does. */
    boolean certain() {
        return cost.proven();
    }

    /** @param change what is to be done besides */
    String cure(String change) {
        return change + "; besides, raise the budget"
                + cost.most().map(to -> " to " + currency.text(to)).orElse(", to how much was not found");
    }

    /** The budget as one of the rules that change. */
    Clash clash(Money budget) {
        return new Clash(
                "budget",
                "the checkout cost stays within " + currency.text(budget),
                "raise the budget"
                        + cost.most().map(to -> " to " + currency.text(to)).orElse(", to how much was not found"),
                Optional.of(new Remedy.RaiseBudget(cost.most(), currency)));
    }

    Remedy besides(Remedy change) {
        return new Remedy.Together(change, new Remedy.RaiseBudget(cost.most(), currency));
    }
}
