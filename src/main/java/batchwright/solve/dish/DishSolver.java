package batchwright.solve.dish;

import batchwright.plan.DishAnswer;
import batchwright.plan.DishPlanner;
import batchwright.plan.DishRequest;
import batchwright.plan.Plan;
import batchwright.plan.Proof;
import batchwright.plan.Session;
import batchwright.quantity.Money;
import batchwright.solve.mip.SearchResult;
import batchwright.solve.mip.Stop;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * Finds the cheapest containers and proves it ({@link FillModel}), then the best of those that cost the same ({@link BestFill}).
 * The two count cost in different ways, and a fill that is cheaper than the proof allows is a fault, never an answer.
 */
public final class DishSolver implements DishPlanner {
    /** The search never knows the budget: the cheapest containers either fit it or show what would. */
    @Override
    public DishAnswer fill(DishRequest request) {
        long start = System.nanoTime();
        Stop stop = () -> System.nanoTime() - start > request.patience().toNanos();
        DishRequest unlimited = request.withBudget(Optional.empty());
        var model = new FillModel(unlimited);
        SearchResult<double[]> result = model.cheapest(stop);
        boolean done = result.state() == SearchResult.State.DONE;
        Optional<Session> filled = result.best().map(values -> best(unlimited, model.stepsIn(values), result));
        Proof proof = proof(filled, result, Duration.ofNanos(System.nanoTime() - start));
        boolean tooDear = filled.isPresent()
                && request.budget().filter(b -> proof.cost().compareTo(b) > 0).isPresent();
        if (tooDear && proof.lowerBound().compareTo(request.budget().orElseThrow()) <= 0) {
            return DishAnswer.notProven(Optional.empty(), proof);
        }
        if (tooDear || (done && filled.isEmpty())) {
            return DishAnswer.notPossible(new WhatIsPossible(request, stop).hints(filled.map(Session::cost)), proof);
        }
        Optional<Plan> proven = filled.map(session -> Plan.of(session.withProof(proof)));
        return done ? DishAnswer.filled(proven.orElseThrow()) : DishAnswer.notProven(proven, proof);
    }

    private static Session best(DishRequest request, List<Integer> found, SearchResult<double[]> result) {
        Session filled = FilledPlan.of(request, BestFill.from(request, found));
        if (filled.cost().minor() < Math.round(result.bound())) {
            throw new IllegalStateException("filled.cost (" + filled.cost() + ") must not be below the proven bound.");
        }
        return filled;
    }

    private static Proof proof(Optional<Session> filled, SearchResult<double[]> result, Duration took) {
        Money cost = filled.map(Session::cost).orElse(Money.ZERO);
        double bound = Double.isFinite(result.bound()) ? Math.max(0, result.bound()) : 0;
        return new Proof(cost, new Money(Math.round(bound)), result.nodes(), took);
    }
}
