package batchwright.explain;

import batchwright.plan.PlanRequest;
import batchwright.plan.Planner.Possible;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Looks for the smallest set of rules that cannot all hold, by a deletion filter: each rule in turn is left out for good when
 * what remains still cannot hold. What is left in the end cannot hold, but does as soon as any one of it goes. A question that
 * is not answered in time keeps the rule: the set then still cannot hold, but may be larger than need be.
 */
final class Conflict {
    private final PlanRequest request;
    private final SoftRules softRules;
    private final Oracle oracle;
    private final Set<SoftRule> needed = new HashSet<>();
    /** Questions still to come, at most: easy ones leave their time to hard ones, which must not take all of it. */
    private int open;

    Conflict(PlanRequest request, SoftRules softRules, Oracle oracle) {
        this.request = request;
        this.softRules = softRules;
        this.oracle = oracle;
        this.open = softRules.all().size() + softRules.groups().size();
    }

    /** In the order of the soft rules. Empty when there is no plan even with every one of them dropped. */
    List<SoftRule> smallest() {
        List<SoftRule> kept = new ArrayList<>(softRules.all());
        for (List<SoftRule> group : softRules.groups()) {
            if (softRules.groups().size() > 2 && goes(kept, group)) {
                kept.removeAll(group);
                continue;
            }
            for (SoftRule softRule : group) {
                if (goes(kept, List.of(softRule))) {
                    kept.remove(softRule);
                }
            }
        }
        return kept;
    }

    /** Whether all the others of the smallest set can hold without it, as far as known. */
    boolean isNeeded(SoftRule softRule) {
        return needed.contains(softRule);
    }

    private boolean goes(List<SoftRule> kept, List<SoftRule> some) {
        List<SoftRule> rest = new ArrayList<>(kept);
        rest.removeAll(some);
        open = Math.max(1, open - 1);
        Possible possible = oracle.shareOf(Math.max(1, open / 2)).ask(softRules.holding(request, rest));
        if (possible == Possible.YES && some.size() == 1) {
            needed.addAll(some);
        }
        return possible == Possible.NO;
    }
}
