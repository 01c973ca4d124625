package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.Clash;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.plan.Session;
import batchwright.plan.Watch;
import batchwright.quantity.Money;
import batchwright.solve.mip.OutOfTime;
import batchwright.solve.mip.RelaxedOptimum;
import batchwright.solve.mip.SearchResult;
import batchwright.solve.rule.Menu;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import java.util.function.LongPredicate;
import java.util.stream.Stream;

/**
 * Finds the cheapest plan of one cooking session and proves it, in four nested steps, each exact: which dishes ({@link DishChoice}); how many
 * containers, packs and snacks over all days ({@link TotalsDraft}), whose optimum is a lower bound for every plan; the grams in
 * each container for a layout of containers over days ({@link DayByDay}); and which snacks on which day ({@link DealOut}).
 */
public final class BatchPlanner implements Planner {
    /** Plans that are answered with besides the best. */
    private static final int MOST_OTHERS = 8;

    private final Function<PlanRequest, LongPredicate> patience;
    private final Way way;

    /** How plans are looked for. */
    @FunctionalInterface
    private interface Way {
        SearchResult<DaysSolution> search(PlanRequest request, Effort effort);
    }

    /** Searches as long as a request's patience. */
    public BatchPlanner() {
        this(BatchPlanner::byTheClock);
    }

    private BatchPlanner(Function<PlanRequest, LongPredicate> patience) {
        this(patience, (request, effort) -> CheapestPlan.search(request, Aim.LEAST_COST, effort));
    }

    private BatchPlanner(Function<PlanRequest, LongPredicate> patience, Way way) {
        this.patience = patience;
        this.way = way;
    }

    /** Looks for plans that cost less than this only; that there is no plan then means that none does. */
    public static BatchPlanner below(Money cost) {
        return new BatchPlanner(
                BatchPlanner::byTheClock,
                (request, effort) -> CheapestPlan.search(request, Aim.LEAST_COST, effort, (double) cost.minor()));
    }

    /**
     * Looks for a good plan near a known one, for so much work, and proves nothing.
     *
     * @param below only plans that cost less are looked for; empty for any
     * @param others dishes that are cooked besides those of the known plan when these alone will not do
     * @param most about how many numbers are looked at
     */
    public static BatchPlanner near(Session known, Optional<Money> below, Set<Dish> others, long most) {
        double cutoff = below.map(cost -> (double) cost.minor()).orElse(Double.POSITIVE_INFINITY);
        return new BatchPlanner(
                request -> work -> work > most,
                (request, effort) -> new NearPlan(request, known, effort, cutoff).search(others));
    }

    /**
     * Searches until so much work is done, whatever the clock says: the same answer on every machine.
     *
     * @param most about how many numbers are looked at; some hundred millions take a second
     */
    public static BatchPlanner untilWork(long most) {
        return asking(work -> work > most);
    }

    /**
     * No plan costs less than this: the totals of all days, as if dishes, containers, snacks and packs could be divided. Soon known.
     *
     * @param most about how many numbers are looked at
     * @return minor units, rounded down; empty when there is no plan, 0 when nothing is known
     */
    public static OptionalLong boundOfTotals(PlanRequest request, long most) {
        var effort = new Effort(new Meter(work -> work > most), Watch.NONE);
        try {
            TotalsDraft totals =
                    Aim.LEAST_COST.complete(TotalsDraft.choosingDishes(request, new Menu(request), effort));
            OptionalDouble cost = new RelaxedOptimum(totals.model(), effort).cost();
            return cost.isEmpty()
                    ? OptionalLong.empty()
                    : OptionalLong.of((long) Math.max(0, Math.floor(cost.getAsDouble())));
        } catch (OutOfTime over) {
            return OptionalLong.of(0);
        }
    }

    /** @param enough asked with the work done so far whether to end */
    static BatchPlanner asking(LongPredicate enough) {
        return new BatchPlanner(request -> enough);
    }

    @Override
    public PlanResult plan(PlanRequest request) {
        return plan(request, Watch.NONE);
    }

    /** The search never knows the budget: it finds the cheapest plan, which either fits the budget or shows what would. */
    @Override
    public PlanResult plan(PlanRequest request, Watch watch) {
        if (request.cooking().sessions() > 1) {
            throw new IllegalArgumentException(
                    "cooking.sessions (" + request.cooking().sessions() + ") must be 1.");
        }
        long start = System.nanoTime();
        PlanRequest unlimited = request.withBudget(Optional.empty());
        Effort effort = effort(request, watch);
        SearchResult<DaysSolution> result = search(unlimited, effort, watch);
        boolean proven = proven(result, effort);
        Optional<DaysSolution> settled =
                result.best().filter(best -> proven).map(best -> new TieBreak(best, effort).settle());
        List<Session> sessions = sessions(settled, effort.incumbents());
        Optional<Session> best = sessions.stream().findFirst();
        Proof proof = proof(best, result, proven, effort, Duration.ofNanos(System.nanoTime() - start));
        Optional<Money> tooDear = request.budget()
                .filter(budget -> best.isPresent() && proof.cost().compareTo(budget) > 0);
        if (tooDear.isPresent()) {
            return proof.lowerBound().compareTo(tooDear.get()) > 0
                    ? new PlanResult.NoPlan(
                            proven
                                    ? List.of(Clash.budget(
                                            tooDear.get(),
                                            proof.cost(),
                                            request.kitchen().currency()))
                                    : List.of(),
                            proof)
                    : PlanResult.GaveUp.overBudget(
                            Plan.of(best.orElseThrow().withRequest(unlimited).withProof(proof)), proof);
        }
        List<Plan> answers = sessions.stream()
                .filter(s ->
                        request.budget().filter(b -> s.cost().compareTo(b) > 0).isEmpty())
                .map(s -> Plan.of(s.withRequest(request).withProof(proof.of(s.cost()))))
                .toList();
        if (!proven) {
            return new PlanResult.GaveUp(answers, proof);
        }
        return answers.isEmpty()
                ? new PlanResult.NoPlan(List.of(), proof)
                : new PlanResult.Planned(answers.get(0), answers.subList(1, answers.size()));
    }

    /** A fault in the search does not lose the plans found before it. */
    private SearchResult<DaysSolution> search(PlanRequest request, Effort effort, Watch watch) {
        try {
            return way.search(request, effort);
        } catch (IllegalStateException fault) {
            if (effort.incumbents().isEmpty()) {
                throw fault;
            }
            watch.wrong(fault.toString());
            return SearchResult.stopped(effort.nodes());
        }
    }

    /** The cheapest first, without packs that could have stayed in the shop. */
    private static List<Session> sessions(Optional<DaysSolution> settled, Incumbents incumbents) {
        return Stream.concat(
                        settled.stream(), incumbents.cheapestFirst().stream().limit(MOST_OTHERS))
                .map(solution -> PlanAssembly.of(solution, Proof.NONE))
                .sorted(Comparator.comparing(Session::cost))
                .toList();
    }

    @Override
    public Possible possible(PlanRequest request) {
        return possible(request, Watch.NONE);
    }

    @Override
    public Possible possible(PlanRequest request, Watch watch) {
        Effort effort = effort(request, new Watch.StopOnly(watch));
        SearchResult<DaysSolution> result = CheapestPlan.search(request, Aim.ANY_PLAN, effort);
        if (!effort.incumbents().isEmpty()) {
            return Possible.YES;
        }
        return proven(result, effort) ? Possible.NO : Possible.UNKNOWN;
    }

    private Effort effort(PlanRequest request, Watch watch) {
        LongPredicate enough = patience.apply(request);
        return new Effort(new Meter(work -> enough.test(work) || watch.stop(work)), watch);
    }

    private static LongPredicate byTheClock(PlanRequest request) {
        long end = System.nanoTime() + request.patience().toNanos();
        return work -> System.nanoTime() - end > 0;
    }

    private static boolean proven(SearchResult<?> result, Effort effort) {
        return result.state() == SearchResult.State.DONE && effort.ledger().isComplete();
    }

    private static Proof proof(
            Optional<Session> best, SearchResult<?> result, boolean proven, Effort effort, Duration took) {
        Money cost = best.map(Session::cost).orElse(Money.ZERO);
        // A search that is ended in the middle of a node forgets what it knew of this node.
        double proved = Math.max(effort.provenSoFar(), effort.ledger().bound(result.bound()));
        long bound = Double.isFinite(proved) ? Math.max(0, Math.round(proved)) : 0;
        return new Proof(cost, proven && best.isPresent() ? cost : new Money(bound), effort.nodes(), took);
    }
}
