package batchwright.solve.rule;

import batchwright.food.Pack;
import batchwright.solve.mip.Expression;

/** The checkout cost stays within the budget. One row: minor units. */
public record BudgetRule() implements Rule {
    @Override
    public void addTo(Draft draft) {
        draft.request()
                .budget()
                .ifPresent(budget -> draft.model().atMost("budget", cost(draft), (double) budget.minor()));
    }

    /** What all packs and the trips to the shops cost together [minor units]. */
    public static Expression cost(Draft draft) {
        var cost = new Expression();
        for (Pack pack : draft.menu().packs()) {
            cost.plus(draft.packs(pack), (double) pack.price().minor());
        }
        double trip = draft.request().kitchen().shops().trip().minor();
        draft.shops().values().forEach(shop -> cost.plus(shop, trip));
        return cost;
    }
}
