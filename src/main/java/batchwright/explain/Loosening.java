package batchwright.explain;

import batchwright.plan.PlanRequest;
import batchwright.plan.Remedy;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;

/**
 * One way to loosen a rule, by whole units (1 g, 1 kcal at each end, 1 dish): more units never take away a plan that fewer
 * units allow.
 *
 * @param reach most units; 0 when the rule cannot be loosened in this way
 * @param loosen the request with the rule loosened by so many units
 * @param cure what a person does to loosen it by so many units: "lower it to 112 g"
 * @param remedy the same as data
 */
record Loosening(int reach, ByUnits loosen, IntFunction<String> cure, IntFunction<Remedy> remedy) {
    /** A request with a rule loosened by so many units. */
    interface ByUnits {
        PlanRequest by(PlanRequest request, int units);
    }

    /** Both to the end, all or nothing. */
    Loosening and(Loosening other) {
        return once(
                request -> other.loosen.by(loosen.by(request, reach), other.reach),
                cure.apply(reach) + ", and " + other.cure.apply(other.reach),
                new Remedy.Together(remedy.apply(reach), other.remedy.apply(other.reach)));
    }

    /** All or nothing. */
    static Loosening once(UnaryOperator<PlanRequest> loosen, String cure, Remedy remedy) {
        return new Loosening(
                1, (request, units) -> units == 0 ? request : loosen.apply(request), k -> cure, k -> remedy);
    }
}
