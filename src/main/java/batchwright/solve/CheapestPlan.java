package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.PlanRequest;
import batchwright.solve.mip.BranchAndBound;
import batchwright.solve.mip.Completion;
import batchwright.solve.mip.Completion.Found;
import batchwright.solve.mip.OutOfTime;
import batchwright.solve.mip.SearchResult;
import batchwright.solve.mip.StepBudget;
import batchwright.solve.rule.Menu;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The whole search for one request: first those with fewer of its dishes, where it has many ({@link FewDishesFirst}); then quick ones
 * for a good plan to measure others by; then the one to the end, which proves.
 */
final class CheapestPlan {
    /** Nodes of the heuristic over sets of dishes: plans with every day alike. */
    private static final long HEURISTIC_SETS = 5;

    /** Nodes of the search over sets of dishes of several eaters in which only plans with every day alike are looked for. */
    private static final long ALIKE_SETS = 25;

    /** Most work on improving one plan: a second or two. */
    private static final long WORK_ON_A_PLAN = 3_000_000_000L;

    /** Plans that are improved. */
    private static final int MOST_IMPROVED = 4;

    /** Most work on each of the requests with fewer dishes: some seconds. */
    private static final long WORK_ON_FEWER = 1_500_000_000;

    /** Most that is spent on plans of one dish less, whose sets are few. */
    private static final long STEPS_WITH_ONE_LESS = 200_000;

    private final PlanRequest request;
    private final Aim aim;
    private final Effort effort;
    /** Only plans that cost less are looked for [cents]. */
    private final double below;

    private final DishSets sets;
    /** Whether the last search over sets came to one; without any, that there is no plan is already proven. */
    private boolean someSetSeen;

    private CheapestPlan(PlanRequest request, Aim aim, Effort effort, double below) {
        this.below = below;
        this.request = request;
        this.aim = aim;
        this.effort = effort;
        this.sets = new DishSets(request, aim, effort);
    }

    static SearchResult<DaysSolution> search(PlanRequest request, Aim aim, Effort effort) {
        return search(request, aim, effort, Double.POSITIVE_INFINITY);
    }

    /** @param below only plans that cost less are looked for [cents] */
    static SearchResult<DaysSolution> search(PlanRequest request, Aim aim, Effort effort, double below) {
        try {
            Optional<Found<DaysSolution>> good = Optional.empty();
            for (PlanRequest fewer : FewDishesFirst.of(request, effort)) {
                good = new CheapestPlan(fewer, aim, effort.sideOfWork(WORK_ON_FEWER), below)
                        .search(good)
                        .found();
            }
            return aim == Aim.ANY_PLAN && good.isPresent()
                    ? SearchResult.stopped(effort.nodes())
                    : new CheapestPlan(request, aim, effort, below).search(good);
        } catch (OutOfTime over) {
            return SearchResult.stopped(effort.nodes());
        }
    }

    private SearchResult<DaysSolution> search(Optional<Found<DaysSolution>> toBeat) {
        Optional<FirstPlan> first = aim == Aim.LEAST_COST && Double.isInfinite(below)
                ? Optional.of(FirstPlan.of(request, sets, effort))
                : Optional.empty();
        Optional<Found<DaysSolution>> good = Stream.concat(
                        toBeat.stream(), first.stream().flatMap(some -> some.plans().stream()))
                .min(Comparator.comparingDouble(Found::cost));
        return request.seats().size() > 1 ? forSeveral(good, first) : forOne(good);
    }

    private SearchResult<DaysSolution> forSeveral(Optional<Found<DaysSolution>> toBeat, Optional<FirstPlan> first) {
        StepBudget budget = new StepBudget(ALIKE_SETS);
        Effort spend = effort.within(budget);
        TotalsDraft draft = aim.complete(TotalsDraft.choosingDishes(request, new Menu(request), spend));
        var choice = new DishChoice(draft, sets, Depth.THOROUGH, spend);
        var alikeFirst = new AlikeFirst(choice, plan -> improved(plan, Improvement.THOROUGH));
        var search = searchOver(draft, alikeFirst, spend, toBeat);
        choice.setOpenBound(search::leastOpenBound);
        SearchResult<DaysSolution> result = search.search();
        if (result.state() == SearchResult.State.STOPPED) {
            effort.proven(result.bound());
            improved(starts(first, alikeFirst.cheapest(MOST_IMPROVED))).ifPresent(search::offer);
            alikeFirst.beginThorough();
            search.askPostponedAnew();
            budget.refill(Long.MAX_VALUE);
            result = search.search();
        }
        effort.count(result);
        return result;
    }

    /** The cheapest plans, of different dishes. */
    private List<Found<DaysSolution>> starts(Optional<FirstPlan> first, List<Found<DaysSolution>> alike) {
        Map<List<Dish>, Found<DaysSolution>> ofEachSet = new LinkedHashMap<>();
        Stream.of(
                        first.map(FirstPlan::plans).orElse(List.of()),
                        alike,
                        first.map(some -> some.fromTotals(effort)).orElse(List.of()))
                .flatMap(List::stream)
                .sorted(Comparator.comparingDouble(Found::cost))
                .forEach(plan ->
                        ofEachSet.putIfAbsent(plan.solution().draft().menu().dishes(), plan));
        return ofEachSet.values().stream().limit(MOST_IMPROVED).toList();
    }

    private Optional<Found<DaysSolution>> improved(List<Found<DaysSolution>> plans) {
        return plans.stream()
                .map(plan -> improved(plan, Improvement.QUICK))
                .min(Comparator.comparingDouble(Found::cost))
                .map(plan -> improved(plan, Improvement.THOROUGH));
    }

    private Found<DaysSolution> improved(Found<DaysSolution> plan, long steps) {
        return Improvement.of(request, aim, effort.sideOfWork(WORK_ON_A_PLAN), plan, steps);
    }

    private BranchAndBound<DaysSolution> searchOver(
            TotalsDraft draft, Completion<DaysSolution> choice, Effort spend, Optional<Found<DaysSolution>> toBeat) {
        double cutoff = toBeat.map(Found::cost).orElse(below);
        var search = new BranchAndBound<>(draft.model(), choice, cutoff, spend);
        toBeat.map(Found::solution).ifPresent(search::setIncumbent);
        return search;
    }

    private SearchResult<DaysSolution> forOne(Optional<Found<DaysSolution>> toBeat) {
        Effort little = effort.limited(HEURISTIC_SETS);
        var alike = overSets(request, Depth.EVERY_DAY_ALIKE, little, toBeat);
        if (alike.state() == SearchResult.State.DONE && !someSetSeen && toBeat.isEmpty()) {
            return alike;
        }
        var good = alike.found();
        int most = Math.min(request.mostDishes(), request.kitchen().dishes().size());
        if (aim == Aim.LEAST_COST && most > request.variety().leastDishes() && !effort.requested()) {
            good = overSets(
                            request.withMostDishes(most - 1),
                            Depth.THOROUGH,
                            effort.sideOfRelaxations(STEPS_WITH_ONE_LESS),
                            good)
                    .found();
            sets.restartClock();
        }
        return overSets(request, Depth.THOROUGH, effort, good);
    }

    private SearchResult<DaysSolution> overSets(
            PlanRequest asked, Depth depth, Effort spend, Optional<Found<DaysSolution>> toBeat) {
        TotalsDraft draft = aim.complete(TotalsDraft.choosingDishes(asked, new Menu(asked), spend));
        var choice = new DishChoice(draft, sets, depth, spend);
        var search = searchOver(draft, choice, spend, toBeat);
        choice.setOpenBound(search::leastOpenBound);
        var result = search.search();
        effort.count(result);
        someSetSeen = choice.wasAsked();
        return result;
    }
}
