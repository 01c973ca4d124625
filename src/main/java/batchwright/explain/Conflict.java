package batchwright.explain;

import batchwright.plan.PlanRequest;
import batchwright.plan.Planner.Possible;
import java.util.ArrayList;
import java.util.List;

/**
 * Looks for the smallest set of rules that cannot all hold, by a deletion filter: each rule in turn is left out for good when
 * what remains still cannot hold. What is left in the end cannot hold, but does as soon as any one of it goes. A question that
 * is not answered in time keeps the rule: the set then still cannot hold, but may be larger than needed.
 */
final class Conflict {
    private final PlanRequest request;
    private final Dials dials;
    private final Oracle oracle;

    Conflict(PlanRequest request, Dials dials, Oracle oracle) {
        this.request = request;
        this.dials = dials;
        this.oracle = oracle;
    }

    /** In the order of the dials. Empty when there is no plan even with every one of them dropped. */
    List<Dial> smallest() {
        List<Dial> kept = new ArrayList<>(dials.all());
        for (List<Dial> group : dials.groups()) {
            if (dials.groups().size() > 2 && goes(kept, group)) {
                kept.removeAll(group);
                continue;
            }
            for (Dial dial : group) {
                if (goes(kept, List.of(dial))) {
                    kept.remove(dial);
                }
            }
        }
        return kept;
    }

    private boolean goes(List<Dial> kept, List<Dial> some) {
        List<Dial> rest = new ArrayList<>(kept);
        rest.removeAll(some);
        return oracle.ask(dials.holding(request, rest)) == Possible.NO;
    }
}
