package batchwright.solve;

import batchwright.plan.PlanResult;
import java.util.OptionalLong;

/** What came out of planning, in few words: the least cost, no plan, or not proven. */
public final class Outcome {
    private Outcome() {}

    public static String of(PlanResult result) {
        return result.match(new PlanResult.Cases<>() {
            @Override
            public String planned(PlanResult.Planned planned) {
                return cost(planned.plan().cost().minor());
            }

            @Override
            public String noPlan(PlanResult.NoPlan noPlan) {
                return "no plan";
            }

            @Override
            public String gaveUp(PlanResult.GaveUp gaveUp) {
                return "not proven";
            }
        });
    }

    public static String of(OptionalLong leastMinor) {
        return leastMinor.isPresent() ? cost(leastMinor.getAsLong()) : "no plan";
    }

    private static String cost(long minor) {
        return "costs " + minor;
    }
}
