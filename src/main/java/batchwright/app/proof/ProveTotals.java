package batchwright.app.proof;

import batchwright.audit.proof.PlanProof;
import batchwright.audit.proof.TotalsOfDishes;
import batchwright.plan.PlanRequest;
import batchwright.solve.mip.OutOfTime;
import batchwright.solve.mip.Stop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * Proves of every set of dishes what its totals cost at least. First many sets at once, the cheapest first, by what they cost when nothing
 * need be whole; then each set that this does not close, by a tree.
 */
public final class ProveTotals {
    /** Pieces of the tree of one set. */
    private static final long MOST_NODES = 20_000;

    private final PlanRequest request;
    private final Stop stop;
    private final List<PlanProof.Part> done = new ArrayList<>();
    private long goal;

    private ProveTotals(PlanRequest request, long goal, Stop stop) {
        this.request = request;
        this.goal = goal;
        this.stop = stop;
    }

    /**
     * A proof of the goal or, where totals or time do not suffice, of less.
     *
     * @param goal what a plan costs that is known [minor units]
     * @param stop told of all work; when it says that time is over, what is proven so far is the answer
     */
    public static PlanProof of(PlanRequest request, long goal, Stop stop) {
        var proof = new ProveTotals(request, goal, stop);
        proof.prove();
        long bound = Math.max(0, proof.goal);
        return new PlanProof(bound, proof.done);
    }

    private void prove() {
        PriorityQueue<ProvenSets> open = new PriorityQueue<>(Comparator.comparingLong(ProvenSets::bound));
        Set<String> all = TotalsOfDishes.dishes(request);
        open.add(ProvenSets.of(request, Set.of(), all, goal, Stop.NEVER));
        List<ProvenSets> single = new ArrayList<>();
        while (!open.isEmpty()) {
            ProvenSets next = open.remove();
            if (next.bound() >= goal || stop.requested()) {
                keep(next);
            } else if (next.isSingle()) {
                single.add(next);
            } else {
                split(next).ifPresentOrElse(open::addAll, () -> keep(next));
            }
        }
        single.sort(Comparator.comparingLong(ProvenSets::bound));
        for (ProvenSets set : single) {
            keep(set.bound() >= goal || stop.requested() ? set : set.proven(goal, MOST_NODES, stop));
        }
    }

    private void keep(ProvenSets sets) {
        goal = Math.min(goal, sets.bound());
        done.add(sets.part());
    }

    /** Smaller ones that hold all that may be cooked of these; empty when time is over. */
    private Optional<List<ProvenSets>> split(ProvenSets sets) {
        try {
            return Optional.of(halves(sets));
        } catch (OutOfTime over) {
            return Optional.empty();
        }
    }

    private List<ProvenSets> halves(ProvenSets sets) {
        List<String> free = sets.freeMostUsedFirst();
        List<ProvenSets> smaller = new ArrayList<>();
        Set<String> among = new LinkedHashSet<>(sets.among());
        boolean lastOne = sets.with().size() == request.mostDishes() - 1;
        if (!lastOne && sets.uses(free.get(0))) {
            smaller.add(sets(plus(sets.with(), free.get(0)), among));
            among.remove(free.get(0));
            smaller.add(sets(sets.with(), among));
            return smaller;
        }
        if (sets.with().size() >= request.variety().leastDishes()) {
            smaller.add(sets(sets.with(), sets.with()));
        }
        for (String dish : free) {
            Set<String> with = plus(sets.with(), dish);
            smaller.add(sets(with, lastOne ? with : among));
            among.remove(dish);
        }
        return smaller;
    }

    private ProvenSets sets(Set<String> with, Set<String> among) {
        return ProvenSets.of(request, with, Set.copyOf(among), goal, stop);
    }

    private static Set<String> plus(Set<String> some, String one) {
        Set<String> more = new LinkedHashSet<>(some);
        more.add(one);
        return more;
    }
}
