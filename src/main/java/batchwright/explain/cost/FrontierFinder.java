package batchwright.explain.cost;

import batchwright.explain.CostOracle;
import batchwright.explain.EaterInRequest;
import batchwright.explain.KnownCost;
import batchwright.explain.cost.Frontier.Point;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Planner;
import batchwright.plan.Seat;
import batchwright.plan.TradeOff;
import batchwright.quantity.Money;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.function.LongSupplier;

/** Solves for the cheapest plan at each of some levels of something else. Takes as long as one plan may at most. */
public final class FrontierFinder {
    private static final int GRAMS_A_STEP = 10;
    private static final int KCAL_A_STEP = 100;
    private final CostOracle oracle;
    private final PlanRequest request;
    private final Optional<Plan> plan;
    private final KnownCost base;

    /** @param plan the best that is known for the request; empty when there is none, even if only for the budget */
    public FrontierFinder(Planner planner, PlanRequest request, Optional<Plan> plan) {
        this(planner, System::nanoTime, request, plan);
    }

    /** @param nanos a clock [ns] */
    FrontierFinder(Planner planner, LongSupplier nanos, PlanRequest request, Optional<Plan> plan) {
        Duration patience = request.patience();
        this.oracle = new CostOracle(planner, nanos, patience);
        this.request = request;
        this.plan = plan;
        this.base = plan.map(p -> KnownCost.of(p.proof())).orElse(KnownCost.NOTHING);
    }

    /** @param energy the eaters with so many kcal more or less to aim at, empty where that must not be planned */
    public Frontier find(TradeOff against, IntFunction<Optional<List<Seat>>> energy) {
        return new Frontier(
                against,
                switch (against) {
                    case PROTEIN -> protein();
                    case ENERGY -> energy(energy);
                    case BUDGET -> budget();
                });
    }

    /** Levels first, with some time kept to find how far each step reaches. */
    private List<Point> protein() {
        ProteinStairs stairs = stairs();
        NavigableSet<Long> levels = proteinLevels(stairs);
        int open = levels.size();
        for (long level : Levels.upThenDown(levels)) {
            stairs.ask(Math.toIntExact(level), open-- + levels.size() / 2);
        }
        List<Point> points = new ArrayList<>();
        open = levels.size();
        for (long change : levels) {
            int level = Math.toIntExact(change);
            int later = --open * ProteinStairs.QUESTIONS;
            KnownCost cost = stairs.known(level);
            points.add(new Point(level, cost, cost.most().map(money -> stairs.within(money, later)), level == 0));
            if (stairs.known(level).noPlan()) {
                break;
            }
        }
        return points;
    }

    private ProteinStairs stairs() {
        return new ProteinStairs(request, oracle).knowing(base, plan);
    }

    /** Round figures where there is one eater, else round changes; and always no change. */
    private NavigableSet<Long> proteinLevels(ProteinStairs stairs) {
        int floor = request.seats().size() == 1
                ? ProteinStairs.floor(EaterInRequest.all(request).get(0))
                : 0;
        return Levels.around(floor, GRAMS_A_STEP, change -> change >= stairs.lowest() && change <= stairs.highest());
    }

    private List<Point> energy(IntFunction<Optional<List<Seat>>> seats) {
        int aim = request.seats().size() == 1
                ? EaterInRequest.all(request).get(0).target().energyAimKcal()
                : 0;
        NavigableSet<Long> levels = Levels.around(
                aim, KCAL_A_STEP, change -> seats.apply(Math.toIntExact(change)).isPresent());
        int open = levels.size();
        List<Point> points = new ArrayList<>();
        for (long change : levels) {
            int level = Math.toIntExact(change);
            boolean inForce = level == 0;
            KnownCost cost = inForce && base.proven()
                    ? base
                    : oracle.ask(request.withSeats(seats.apply(level).orElseThrow()), open)
                            .cost();
            open--;
            points.add(new Point(level, inForce ? better(cost) : cost, Optional.empty(), inForce));
        }
        return points;
    }

    /** What another search for the same request found, joined with what is already known of it. */
    private KnownCost better(KnownCost again) {
        KnownCost both = base.notBelow(again.least());
        return again.noPlan() ? again : again.most().map(both::notAbove).orElse(both);
    }

    private List<Point> budget() {
        ProteinStairs stairs = stairs();
        KnownCost now = stairs.ask(0, ProteinStairs.QUESTIONS);
        KnownCost cheapest = now.most().isPresent() ? now : stairs.ask(stairs.lowest(), ProteinStairs.QUESTIONS);
        NavigableSet<Money> budgets = cheapest.most().map(this::budgets).orElse(new TreeSet<>());
        List<Point> points = new ArrayList<>();
        int open = budgets.size();
        for (Money budget : budgets) {
            ProteinReach reach = stairs.within(budget, --open * ProteinStairs.QUESTIONS);
            points.add(new Point(
                    0,
                    KnownCost.exactly(budget),
                    Optional.of(reach),
                    now.most().filter(budget::equals).isPresent()));
        }
        return points;
    }

    /** Round sums on both sides of a cost, the cost, and the budget that was asked for. */
    private NavigableSet<Money> budgets(Money cost) {
        long inForce = cost.minor();
        var budgets = new TreeSet<Money>();
        request.budget().ifPresent(budgets::add);
        Levels.around(inForce, Levels.step(inForce), change -> change + inForce > 0).stream()
                .limit(Frontier.MOST_POINTS - (long) budgets.size())
                .forEach(change -> budgets.add(new Money(inForce + change)));
        return budgets;
    }
}
