package batchwright.explain;

import batchwright.explain.Oracle.WorkLimits;
import batchwright.plan.Clash;
import batchwright.plan.Clashes;
import batchwright.plan.PlanRequest;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.plan.Remedy;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * Why there is no plan: smallest sets of rules that cannot all hold, and for each rule the smallest change of it alone that makes a
 * plan possible, or else changes of several. Where there is a plan, but too dear, the budget is one of the rules. Where there is none
 * at any cost, a change still has to make a plan possible within the budget; if none does, it says how much larger the budget must
 * be besides.
 */
public final class ClashFinder {
    /** Some seconds on a machine that does nothing else. */
    private static final WorkLimits USUAL = new WorkLimits(600_000_000L, 5_000_000_000L);

    /** With less time nothing would be found out. */
    private static final Duration LEAST = Duration.ofSeconds(1);

    private final Planner planner;
    private final LongSupplier nanos;
    private final Duration time;
    private final WorkLimits limits;

    /** Does work for some seconds; takes no more time than what is left, but at least a second. */
    public ClashFinder(Planner planner, Duration left) {
        this(planner, System::nanoTime, left.compareTo(LEAST) < 0 ? LEAST : left, USUAL);
    }

    /**
     * @param nanos a clock [ns]
     * @param time most time for everything
     */
    ClashFinder(Planner planner, LongSupplier nanos, Duration time, WorkLimits limits) {
        this.planner = new TimeLimitedPlanner(planner);
        this.nanos = nanos;
        this.time = time;
        this.limits = limits;
    }

    /**
     * Why a request has no plan; at least one set. Besides a budget that is too small only rules are named that are proven to clash
     * with it.
     *
     * @param proof how the planner's search ended
     */
    public Clashes clashes(PlanRequest request, Proof proof) {
        Optional<Clash> tooDear = request.budget()
                .filter(budget -> proof.cost().compareTo(budget) > 0)
                .map(budget -> tooDear(budget, proof, request.kitchen().currency()));
        if (tooDear.isEmpty()) {
            Oracle oracle = oracle();
            return new ClashSearch(request, oracle).clashes().withTimeEnded(oracle.timeEnded());
        }
        List<Clash> clashes = new ArrayList<>(List.of(tooDear.get()));
        Oracle oracle = oracle();
        var withinBudget = new WithinBudget(request, oracle);
        withinBudget.cures().stream()
                .filter(cure ->
                        withinBudget.isNeeded(cure.softRule()) || cure.found().isPresent())
                .map(cure -> cure.clash(true))
                .forEach(clashes::add);
        return Clashes.of(clashes).withTimeEnded(oracle.timeEnded());
    }

    /** There is a plan, but not within the budget. */
    private static Clash tooDear(Money budget, Proof proof, Currency currency) {
        return proof.provenCheapest()
                ? Clash.budget(budget, proof.cost(), currency)
                : perhapsTooDear(budget, proof, currency);
    }

    /** Which is cheapest was not known in time. */
    private static Clash perhapsTooDear(Money budget, Proof proof, Currency currency) {
        String raised = currency.text(proof.cost());
        return new Clash(
                "budget",
                "the checkout cost stays within " + currency.text(budget) + "; every plan costs at least "
                        + currency.text(proof.lowerBound()),
                "raise the budget to " + raised + ", the cost of a plan that was found; perhaps less would do",
                Optional.of(new Remedy.RaiseBudget(Optional.of(proof.cost()), currency)));
    }

    /** For a request without a plan at any cost: one for each rule of the first set. Empty when no rule that can be loosened is to blame. */
    List<Cure> cures(PlanRequest request) {
        return new ClashSearch(request, oracle()).cures();
    }

    /** For a request with plans, all too dear: one for each rule of the set besides the budget. */
    List<Cure> curesWithinBudget(PlanRequest request) {
        return new WithinBudget(request, oracle()).cures();
    }

    private Oracle oracle() {
        return new Oracle(planner, limits, nanos, time);
    }

    /** Which rules clash with the budget. */
    private static final class WithinBudget {
        private final PlanRequest request;
        private final Oracle oracle;
        private final SoftRules softRules;
        private final Conflict conflict;

        WithinBudget(PlanRequest request, Oracle oracle) {
            this.request = request;
            this.oracle = oracle;
            this.softRules = SoftRules.of(request);
            this.conflict = new Conflict(request, softRules, oracle.shareOf(2));
        }

        boolean isNeeded(SoftRule rule) {
            return conflict.isNeeded(rule);
        }

        List<Cure> cures() {
            return new CuresAlone(request, oracle, Cure::of).of(conflict.smallest(softRules.all()));
        }
    }
}
