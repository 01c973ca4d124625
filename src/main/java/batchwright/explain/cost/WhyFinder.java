package batchwright.explain.cost;

import batchwright.explain.CostOracle;
import batchwright.explain.KnownCost;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Planner;
import batchwright.quantity.Money;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;

/** Finds out why a plan costs what it costs, by asking for plans of changed requests. Takes as long as one plan may at most. */
public final class WhyFinder {
    private static final int TEN_GRAMS = 10;
    /** At most a 400th of the plan's cost, but never less than this: 1.00 of USD, 100 of JPY. */
    private static final Money LEAST_STEP = new Money(100);

    private static final int STEPS = 400;

    private static final int PROTEIN_PER_CENT = 25;
    private static final int RULES_PER_CENT = 65;

    private final Planner planner;
    private final LongSupplier nanos;

    public WhyFinder(Planner planner) {
        this(planner, System::nanoTime);
    }

    /** @param nanos a clock [ns] */
    WhyFinder(Planner planner, LongSupplier nanos) {
        this.planner = planner;
        this.nanos = nanos;
    }

    /** @param plan the best that is known for the request */
    public Why why(PlanRequest request, Plan plan) {
        KnownCost base = KnownCost.of(plan.proof());
        var all = new CostOracle(planner, nanos, request.patience());
        Why.Protein protein = protein(request, plan, base, all.forPerCent(PROTEIN_PER_CENT));
        List<RuleCost> rules =
                base.proven() ? new RuleCosts(request, plan, base, all.forPerCent(RULES_PER_CENT)).all() : List.of();
        NearMisses.Found misses =
                base.proven() ? new NearMisses(request, plan, all).find() : new NearMisses.Found(List.of(), false);
        return new Why(base, rules, protein, misses.misses(), misses.complete(), ItemCost.of(plan));
    }

    private static Why.Protein protein(PlanRequest request, Plan plan, KnownCost base, CostOracle oracle) {
        var stairs = new ProteinStairs(request, oracle).knowing(base, Optional.of(plan));
        KnownCost more = stairs.ask(TEN_GRAMS, 2 * ProteinStairs.QUESTIONS);
        Money cost = plan.cost();
        Money step = step(cost);
        ProteinReach forMore = stairs.within(cost.plus(step), ProteinStairs.QUESTIONS);
        Optional<ProteinReach> forLess =
                cost.compareTo(step) < 0 ? Optional.empty() : Optional.of(stairs.within(cost.minus(step), 0));
        return new Why.Protein(TEN_GRAMS, more, step, forMore, forLess);
    }

    /** A round sum that matters: 1.00 USD is a small part of 60 USD, but 1.00 IDR is nothing. */
    private static Money step(Money cost) {
        Money share = new Money(Levels.round(cost.minor() / STEPS));
        return share.compareTo(LEAST_STEP) > 0 ? share : LEAST_STEP;
    }
}
