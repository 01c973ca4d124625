package batchwright.app;

import batchwright.explain.cost.Frontier;
import batchwright.explain.cost.FrontierFinder;
import batchwright.explain.cost.Insight;
import batchwright.explain.cost.Why;
import batchwright.explain.cost.WhyFinder;
import batchwright.needs.Needs;
import batchwright.needs.NeedsCalculator;
import batchwright.needs.target.Targets;
import batchwright.person.Eater;
import batchwright.person.Goal;
import batchwright.plan.LargestBox;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.plan.Seat;
import batchwright.plan.SecondOpinion;
import batchwright.plan.Watch;
import batchwright.quantity.Energy;
import batchwright.solve.opinion.OjAlgo;
import java.util.List;
import java.util.Optional;

/** What is found out beside a plan. */
final class FindInsight {
    private final Planner planner;
    private final Watch watch;
    private final PlanRequest request;
    private final List<Needs> needs;

    /**
     * @param watch may end everything; costs of changed requests are not told to it
     * @param needs of those at the table, none of them stopped by a caution
     */
    FindInsight(Planner planner, Watch watch, PlanRequest request, List<Needs> needs) {
        this.planner = new UntilStopped(planner, new Watch.StopOnly(watch));
        this.watch = watch;
        this.request = request;
        this.needs = needs;
    }

    /**
     * @param plan the best that is known; without one there is nothing to say why
     * @param proof what is proven of it, or that there is none
     */
    Insight find(InsightWanted wanted, Optional<Plan> plan, Proof proof) {
        if (watch.stop()) {
            return Insight.NONE;
        }
        Optional<Why> why = wanted.why() ? plan.map(p -> new WhyFinder(planner).why(request, p)) : Optional.empty();
        Optional<Frontier> frontier = wanted.frontier()
                .map(against -> new FrontierFinder(planner, request, plan).find(against, this::aimingAt));
        Optional<SecondOpinion> second =
                wanted.secondOpinion() ? Optional.of(new OjAlgo().of(request, plan, proof)) : Optional.empty();
        return new Insight(why, frontier, second);
    }

    /** Everybody with so many kcal more a day, and all that follows from them; empty where a caution would stop planning. */
    private Optional<List<Seat>> aimingAt(int moreKcal) {
        boolean allowed = needs.stream().noneMatch(n -> stops(n, moreKcal));
        return allowed ? Optional.of(needs.stream().map(n -> seat(n, moreKcal)).toList()) : Optional.empty();
    }

    private static boolean stops(Needs needs, int moreKcal) {
        return moreKcal != 0
                && NeedsCalculator.needsOf(withGoal(needs.eater(), needs.goalKcal() + moreKcal))
                        .stopsPlanning();
    }

    private static Eater withGoal(Eater eater, double kcal) {
        return eater.withGoal(new Goal.EnergyADay(kcal));
    }

    /** Protein keeps to the goal that was asked for. */
    private Seat seat(Needs needs, int moreKcal) {
        var total = new Energy(needs.total().kcal() + moreKcal);
        return new Seat(
                needs.eater(),
                LargestBox.on(
                        Targets.of(
                                        needs.eater(),
                                        total,
                                        needs.goal().orElseThrow().change())
                                .day(),
                        request.kitchen().equipment().limits()));
    }
}
