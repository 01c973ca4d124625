package batchwright.explain;

import batchwright.plan.PlanRequest;
import batchwright.plan.Planner.Possible;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Looks for a smallest set of rules that cannot all hold, by a deletion filter: each rule in turn is left out for good when what
 * remains still cannot hold. What is left in the end cannot hold, but does as soon as any one of it goes. That there is no plan is
 * mostly seen soon; with few rules left a plan may take long to find, which is why they are not halved. A question that is not
 * answered keeps the rule: the set then still cannot hold, but may be larger than need be.
 */
final class Conflict {
    private final PlanRequest request;
    private final SoftRules softRules;
    private final Oracle oracle;
    private final Set<SoftRule> perhaps = new HashSet<>();

    /** @param request without a plan */
    Conflict(PlanRequest request, SoftRules softRules, Oracle oracle) {
        this.request = request;
        this.softRules = softRules;
        this.oracle = oracle;
    }

    /**
     * In the order of the soft rules.
     *
     * @param from the only ones that are held
     * @return empty when there is no plan even with every one of them dropped
     */
    List<SoftRule> smallest(List<SoftRule> from) {
        List<SoftRule> kept = new ArrayList<>(from);
        for (List<SoftRule> group : softRules.groups()) {
            List<SoftRule> some = group.stream().filter(from::contains).toList();
            if (softRules.groups().size() > 2 && some.size() > 1 && ask(kept, some) == Possible.NO) {
                kept.removeAll(some);
                continue;
            }
            for (SoftRule softRule : some) {
                switch (ask(kept, List.of(softRule))) {
                    case NO -> kept.remove(softRule);
                    case UNKNOWN -> perhaps.add(softRule);
                    case YES -> {}
                }
            }
        }
        return kept;
    }

    /** Whether all the others of the set can hold without it, as far as known. */
    boolean isNeeded(SoftRule softRule) {
        return !perhaps.contains(softRule);
    }

    /** Whether there is a plan with these rules but for some of them. */
    private Possible ask(List<SoftRule> kept, List<SoftRule> some) {
        List<SoftRule> rest = new ArrayList<>(kept);
        rest.removeAll(some);
        return oracle.ask(softRules.holding(request, rest));
    }
}
