package batchwright.solve.together;

import batchwright.food.Dish;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.plan.Seat;
import batchwright.plan.Session;
import batchwright.plan.Watch;
import batchwright.quantity.Money;
import batchwright.solve.BatchPlanner;
import java.time.Duration;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * Plans one cooking session for many eaters. A few are planned for by {@link BatchPlanner}, too, which may prove its plan; of more, the plan
 * is a heuristic, with a bound: each eater's part costs no less than by weight, at the best price, of all dishes.
 */
public final class TogetherPlanner implements Planner {
    /** So many share a search that can prove. */
    public static final int MOST_PROVEN = 6;

    /** Of the work of a whole search, what planning for one may take: {@code 1 / PART_OF_ONE}. */
    private static final long PART_OF_ONE = 50;

    private final AtOnce atOnce;
    private final long work;
    private final int mostProven;
    /** By the short names of the eaters: all requests are for the same kitchen. */
    private final Map<String, Alone> known = new ConcurrentHashMap<>();

    /** What is found of an eater by themselves. */
    private record Alone(OptionalLong bound, Optional<MealsOfOne> meals) {}

    /**
     * For requests that differ in their eaters alone.
     *
     * @param work of a whole search, as {@link Watch#stop(long)} counts it
     */
    public TogetherPlanner(AtOnce atOnce, long work) {
        this(atOnce, work, MOST_PROVEN);
    }

    /** @param mostProven eaters that share a search that can prove */
    TogetherPlanner(AtOnce atOnce, long work, int mostProven) {
        this.atOnce = atOnce;
        this.work = work;
        this.mostProven = mostProven;
    }

    /** Those for whom nothing is found even by themselves: no plan for all can have them. */
    public List<Seat> without(PlanRequest request, Watch watch) {
        List<Alone> alone = alone(request, new ForOne(request, work / PART_OF_ONE, watch));
        return request.seats().stream()
                .filter(seat -> alone.get(request.seats().indexOf(seat)).meals().isEmpty())
                .toList();
    }

    @Override
    public PlanResult plan(PlanRequest request) {
        return plan(request, Watch.NONE);
    }

    @Override
    public PlanResult plan(PlanRequest request, Watch watch) {
        long start = System.nanoTime();
        var forOne = new ForOne(request, work / PART_OF_ONE, watch);
        List<Alone> alone = alone(request, forOne);
        if (alone.stream().anyMatch(one -> one.bound().isEmpty())) {
            return new PlanResult.NoPlan(List.of(), Proof.NONE);
        }
        Optional<PlanResult> exact = request.seats().size() > mostProven
                ? Optional.empty()
                : Optional.of(BatchPlanner.untilWork(work).plan(request, watch));
        if (exact.filter(PlanResult.NoPlan.class::isInstance).isPresent()
                || exact.flatMap(PlanResult::best)
                        .filter(plan -> plan.proof().provenCheapest())
                        .isPresent()) {
            return exact.orElseThrow();
        }
        Optional<Session> best = Stream.concat(
                        exact.flatMap(PlanResult::best).map(Plan::first).stream(),
                        decomposed(forOne, alone, watch).stream())
                .min(Comparator.comparing(Session::cost));
        Money bound =
                forOne.bound(alone.stream().map(one -> one.bound().orElse(0)).toList());
        Money greatest = exact.map(result -> result.proof().lowerBound())
                .filter(other -> other.compareTo(bound) > 0)
                .orElse(bound);
        return result(
                best, greatest, exact.map(result -> result.proof().nodes()).orElse(0L), start);
    }

    private static PlanResult result(Optional<Session> best, Money bound, long nodes, long start) {
        Duration took = Duration.ofNanos(System.nanoTime() - start);
        var proof = new Proof(best.map(Session::cost).orElse(Money.ZERO), bound, nodes, took);
        Optional<Plan> plan = best.map(session -> Plan.of(session.withProof(proof)));
        return plan.isPresent() && proof.provenCheapest()
                ? new PlanResult.Planned(plan.get())
                : new PlanResult.GaveUp(plan, proof);
    }

    private Optional<Session> decomposed(ForOne forOne, List<Alone> alone, Watch watch) {
        List<MealsOfOne> free =
                alone.stream().flatMap(one -> one.meals().stream()).toList();
        if (free.size() < alone.size() || watch.stop()) {
            return Optional.empty();
        }
        return CommonDishes.of(free, forOne, atOnce)
                .flatMap(meals -> WholePacks.shop(OnePot.of(forOne.all(), meals))
                        .map(session -> LeftOfPacks.used(forOne, meals, session, watch)));
    }

    private List<Alone> alone(PlanRequest request, ForOne forOne) {
        Set<Dish> dishes = new HashSet<>(request.kitchen().dishes().values());
        return atOnce.each(
                request.seats(), seat -> known.computeIfAbsent(seat.eater().id(), id -> alone(forOne, seat, dishes)));
    }

    private static Alone alone(ForOne forOne, Seat seat, Set<Dish> dishes) {
        OptionalLong bound = forOne.bound(seat);
        return new Alone(bound, bound.isEmpty() ? Optional.empty() : forOne.meals(seat, dishes));
    }

    /** By looking for a plan. */
    @Override
    public Possible possible(PlanRequest request) {
        PlanResult result = plan(request);
        if (result.best().isPresent()) {
            return Possible.YES;
        }
        return result instanceof PlanResult.NoPlan ? Possible.NO : Possible.UNKNOWN;
    }
}
