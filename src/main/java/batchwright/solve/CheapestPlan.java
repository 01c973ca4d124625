package batchwright.solve;

import batchwright.plan.PlanRequest;
import batchwright.solve.mip.BranchAndBound;
import batchwright.solve.mip.Completion.Found;
import batchwright.solve.mip.OutOfTime;
import batchwright.solve.mip.SearchResult;
import batchwright.solve.rule.Menu;
import java.util.Optional;

/**
 * The whole search for one request: first those with fewer of its dishes, where it has many ({@link FewDishesFirst}); then quick ones
 * for a good plan to measure others by; then the one to the end, which proves.
 */
final class CheapestPlan {
    /** Nodes of the heuristic over sets of dishes: plans with every day alike. */
    private static final long HEURISTIC_SETS = 5;

    /** Most work on each of the requests with fewer dishes: some seconds. */
    private static final long WORK_ON_FEWER = 1_500_000_000;

    /** Most that is spent on plans of one dish less, whose sets are few. */
    private static final long STEPS_WITH_ONE_LESS = 200_000;

    private final PlanRequest request;
    private final Aim aim;
    private final Effort effort;
    private final DishSets sets;
    /** Whether the last search over sets came to one; without any, that there is no plan is already proven. */
    private boolean someSetSeen;

    private CheapestPlan(PlanRequest request, Aim aim, Effort effort) {
        this.request = request;
        this.aim = aim;
        this.effort = effort;
        this.sets = new DishSets(request, aim, effort);
    }

    static SearchResult<DaysSolution> search(PlanRequest request, Aim aim, Effort effort) {
        try {
            Optional<Found<DaysSolution>> good = Optional.empty();
            for (PlanRequest fewer : FewDishesFirst.of(request, effort)) {
                good = new CheapestPlan(fewer, aim, effort.sideOfWork(WORK_ON_FEWER))
                        .search(good)
                        .found();
            }
            return aim == Aim.ANY_PLAN && good.isPresent()
                    ? SearchResult.stopped(effort.nodes())
                    : new CheapestPlan(request, aim, effort).search(good);
        } catch (OutOfTime over) {
            return SearchResult.stopped(effort.nodes());
        }
    }

    private SearchResult<DaysSolution> search(Optional<Found<DaysSolution>> toBeat) {
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
        double cutoff = toBeat.map(Found::cost).orElse(Double.POSITIVE_INFINITY);
        var search = new BranchAndBound<>(draft.model(), choice, cutoff, spend);
        choice.setOpenBound(search::leastOpenBound);
        toBeat.map(Found::solution).ifPresent(search::setIncumbent);
        var result = search.search();
        effort.count(result);
        someSetSeen = choice.wasAsked();
        return result;
    }
}
