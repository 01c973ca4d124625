package batchwright.solve;

import batchwright.solve.mip.Expression;
import batchwright.solve.rule.BudgetRule;
import batchwright.solve.rule.Draft;
import batchwright.solve.rule.Rule;
import batchwright.solve.rule.Rules;

/** What a search is after. */
enum Aim {
    /** The least checkout cost. */
    LEAST_COST {
        @Override
        Expression of(Draft draft) {
            return BudgetRule.cost(draft);
        }
    },
    /** Any plan at all. */
    ANY_PLAN {
        @Override
        Expression of(Draft draft) {
            return new Expression();
        }
    };

    /** Every cost is a whole number of cents. */
    private static final double CENT = 1;

    abstract Expression of(Draft draft);

    /** Adds every rule and this aim to a draft. */
    <D extends Draft> D complete(D draft) {
        for (Rule rule : Rules.ALL) {
            rule.addTo(draft);
        }
        draft.model().minimise(of(draft), CENT);
        return draft;
    }
}
