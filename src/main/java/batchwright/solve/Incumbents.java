package batchwright.solve;

import batchwright.solve.mip.Completion.Found;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The plans that a search has found, each cheaper than the one before. */
final class Incumbents {
    private final List<Found<DaysSolution>> found = new ArrayList<>();

    /** Takes a plan if it is cheaper than all before; returns whether it is. */
    boolean take(Found<DaysSolution> plan) {
        return plan.cost() < cheapest() && found.add(plan);
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    /** Cost of the cheapest [cents]; infinite when there is none. */
    double cheapest() {
        return found.isEmpty()
                ? Double.POSITIVE_INFINITY
                : found.get(found.size() - 1).cost();
    }

    /** The cheapest first. */
    List<DaysSolution> cheapestFirst() {
        List<DaysSolution> plans =
                new ArrayList<>(found.stream().map(Found::solution).toList());
        Collections.reverse(plans);
        return plans;
    }
}
