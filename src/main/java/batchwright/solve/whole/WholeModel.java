package batchwright.solve.whole;

import batchwright.plan.PlanRequest;
import batchwright.solve.mip.MipModel;
import batchwright.solve.mip.MpsText;
import batchwright.solve.rule.BudgetRule;
import batchwright.solve.rule.Rule;
import batchwright.solve.rule.Rules;
import java.util.List;

/**
 * The whole plan as one model: minimise the checkout cost in minor units. It has a solution exactly when there is a plan, and its
 * optimum is the cost of the cheapest one. The budget is a row of it when one was given.
 */
public final class WholeModel {
    private static final String MADE = "Made by Batchwright.";
    private static final List<String> REMARKS = List.of(
            MADE,
            "The whole plan, each day of each eater on its own. Minimise; COST is in minor units.",
            "The table of names beside this file says what each code stands for.");

    private final WholeDraft draft;

    private WholeModel(WholeDraft draft) {
        this.draft = draft;
    }

    public static WholeModel of(PlanRequest request) {
        var draft = new WholeDraft(request);
        for (Rule rule : Rules.ALL) {
            if (!SingleDays.KEEPS.contains(rule)) {
                rule.addTo(draft);
            }
        }
        SingleDays.addTo(draft);
        draft.model().minimise(BudgetRule.cost(draft), 1);
        return new WholeModel(draft);
    }

    public MipModel model() {
        return draft.model();
    }

    /** For a solver from elsewhere. */
    public String mps() {
        return MpsText.of(draft.model(), REMARKS);
    }

    /** What the codes of {@link #mps()} stand for: CSV with code, kind, name, meaning and unit. */
    public String names() {
        return NamesTable.of(draft);
    }

    /** Whether a file with this beginning is such a model. */
    public static boolean isIn(String beginning) {
        return beginning.startsWith("* " + MADE);
    }

    /** Whether a file with this beginning is such a table of names. */
    public static boolean isNamesIn(String beginning) {
        return beginning.startsWith(NamesTable.HEAD);
    }
}
