package batchwright.explain.cost;

import batchwright.audit.Audit;
import batchwright.explain.CostOracle;
import batchwright.explain.KnownCost;
import batchwright.explain.cost.RuleCost.Moved;
import batchwright.plan.EaterDays;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Session;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Asks for the cost of each rule. Two answers need no search: a plan that keeps a tightened rule is the cheapest then too; and
 * where rules loosened together save nothing, none of them does alone.
 */
final class RuleCosts {
    private final PlanRequest request;
    private final Plan plan;
    private final KnownCost base;
    private final CostOracle oracle;
    private int open;

    /** @param base of the request itself; there is a plan */
    RuleCosts(PlanRequest request, Plan plan, KnownCost base, CostOracle oracle) {
        this.request = request;
        this.plan = plan;
        this.base = base;
        this.oracle = oracle;
    }

    List<RuleCost> all() {
        List<RulePerturbation> rules = RulePerturbations.of(request);
        Set<RulePerturbation> slack =
                rules.stream().filter(this::isSlack).collect(Collectors.toCollection(HashSet::new));
        open = 2 * rules.size() - slack.size() + 1;
        Set<RulePerturbation> needless = saveNothing(slack) ? slack : Set.of();
        return rules.stream()
                .map(rule -> new RuleCost(
                        rule.rule(),
                        rule.eater(),
                        rule.now(),
                        rule.looser()
                                .map(c -> new Moved(
                                        c.to(),
                                        needless.contains(rule)
                                                ? base
                                                : looser(c.made().apply(request)))),
                        rule.tighter()
                                .map(c -> new Moved(
                                        c.to(),
                                        slack.contains(rule)
                                                ? base
                                                : tighter(c.made().apply(request))))))
                .toList();
    }

    private KnownCost looser(PlanRequest changed) {
        return oracle.ask(changed, open--).cost().notAbove(base.most().orElseThrow());
    }

    private KnownCost tighter(PlanRequest changed) {
        return oracle.ask(changed, open--).cost().notBelow(base.least());
    }

    private boolean saveNothing(Set<RulePerturbation> some) {
        if (some.size() < 2) {
            return false;
        }
        PlanRequest changed = request;
        for (RulePerturbation rule : some) {
            changed = rule.looser().map(Change::made).orElse(r -> r).apply(changed);
        }
        return looser(changed).equals(base);
    }

    /** Whether the plan keeps the rule when it is tightened. */
    private boolean isSlack(RulePerturbation rule) {
        Optional<PlanRequest> changed = rule.tighter().map(c -> c.made().apply(request));
        return changed.filter(r -> Audit.of(r, seated(r)).passed()).isPresent();
    }

    /** The plan, for the same eaters with other targets. */
    private Plan seated(PlanRequest changed) {
        Session session = plan.first();
        return Plan.of(session.withRequest(changed)
                .withEaters(
                        session.eaters().stream().map(e -> seated(e, changed)).toList()));
    }

    private static EaterDays seated(EaterDays eater, PlanRequest changed) {
        return changed.seats().stream()
                .filter(seat -> seat.eater().equals(eater.seat().eater()))
                .findFirst()
                .map(seat -> new EaterDays(seat, eater.days()))
                .orElseThrow();
    }
}
