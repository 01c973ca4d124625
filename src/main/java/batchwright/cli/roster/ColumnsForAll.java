package batchwright.cli.roster;

import batchwright.app.PlanQuestion;
import batchwright.app.roster.AnswerRoster;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The columns of a roster that ask for one plan for all.
 *
 * @param dishes that are cooked at most
 */
public record ColumnsForAll(int dishes) implements AnswerRoster.Asks {
    @Override
    public Set<String> columns() {
        return PlanColumns.FOR_ALL;
    }

    @Override
    public PlanQuestion question(List<String> eaters, Map<String, String> said) {
        Map<String, String> all = new LinkedHashMap<>(said);
        all.put(PlanColumns.DISHES, "" + dishes);
        return new PlanColumns().question(eaters, all);
    }
}
