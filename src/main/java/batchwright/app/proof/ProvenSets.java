package batchwright.app.proof;

import batchwright.audit.proof.PlanProof;
import batchwright.audit.proof.TotalsOfDishes;
import batchwright.plan.PlanRequest;
import batchwright.solve.mip.BoundTree;
import batchwright.solve.mip.LeastCost;
import batchwright.solve.mip.OutOfTime;
import batchwright.solve.mip.Stop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is proven of all sets of dishes with some dishes and none but others.
 *
 * @param with ids of dishes that are in each
 * @param among ids of dishes that may be
 * @param bound they cost at least so much [minor units]
 * @param cooked how much of each dish is cooked where they cost least, when nothing need be whole
 */
record ProvenSets(
        PlanRequest request,
        Set<String> with,
        Set<String> among,
        PlanProof.Tree tree,
        long bound,
        Map<String, Double> cooked) {
    /** A dish is used when it is cooked by more than this. */
    private static final double USED = 1e-6;

    /**
     * What multipliers prove, without a split.
     *
     * @param goal of which no more need be proven
     * @param stop told of all work
     */
    static ProvenSets of(PlanRequest request, Set<String> with, Set<String> among, long goal, Stop stop) {
        var rows = new RowsToSolve(TotalsOfDishes.of(request, with, among));
        double[] lower = rows.lower();
        double[] upper = rows.upper();
        if (!rows.narrow(lower, upper)) {
            return new ProvenSets(request, with, among, new PlanProof.Leaf(Map.of()), Long.MAX_VALUE, Map.of());
        }
        LeastCost.Answer answer = new LeastCost(rows.model(stop), stop).within(lower, upper, BoundTree.enough(goal));
        return new ProvenSets(
                request,
                with,
                among,
                rows.leaf(answer.multipliers()),
                rows.bound(answer.multipliers(), lower, upper),
                answer.isPoint() ? rows.values(answer.values(), "cook.") : Map.of());
    }

    /** The same with what a tree proves, up to the goal; as it is when time is over. */
    ProvenSets proven(long goal, long mostNodes, Stop stop) {
        var rows = new RowsToSolve(TotalsOfDishes.of(request, with, among));
        try {
            var search = new BoundTree(rows.model(stop), rows, goal, mostNodes, stop);
            PlanProof.Tree grown = rows.tree(search.grow());
            return new ProvenSets(request, with, among, grown, search.proven(), cooked);
        } catch (OutOfTime over) {
            return this;
        }
    }

    boolean isSingle() {
        return with.size() == among.size();
    }

    boolean uses(String dish) {
        return cooked.getOrDefault(dish, 0.0) > USED;
    }

    /** Dishes that may be in a set or not. */
    List<String> freeMostUsedFirst() {
        List<String> free = new ArrayList<>(among);
        free.removeAll(with);
        free.sort(Comparator.comparingDouble((String dish) -> -cooked.getOrDefault(dish, 0.0))
                .thenComparing(dish -> dish));
        return free;
    }

    PlanProof.Part part() {
        return new PlanProof.Part(with, among, tree);
    }
}
