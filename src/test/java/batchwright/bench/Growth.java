package batchwright.bench;

import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.solve.BatchPlanner;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** How long our search takes as requests grow in one thing. */
final class Growth {
    private static final int WARM_UP = 2;
    private static final int RUNS = 11;
    private static final long LONG_MILLIS = 3_000;

    private Growth() {}

    /**
     * One point.
     *
     * @param millis median of the runs
     * @param proven whether the cheapest plan was proven, or that there is none; else the time is how long it was searched
     */
    record Point(long millis, boolean proven) {}

    /** By what grows, and by how much of it there is. */
    static Map<String, Map<Integer, Point>> measured() {
        var measured = new LinkedHashMap<String, Map<Integer, Point>>();
        Sizes.growing().forEach((what, requests) -> {
            var points = new LinkedHashMap<Integer, Point>();
            requests.forEach((count, request) -> points.put(count, point(request)));
            measured.put(what, points);
        });
        return measured;
    }

    private static Point point(PlanRequest request) {
        Point first = once(request);
        if (first.millis > LONG_MILLIS) {
            return first;
        }
        for (int k = 0; k < WARM_UP; k++) {
            once(request);
        }
        long[] millis = new long[RUNS];
        for (int k = 0; k < RUNS; k++) {
            millis[k] = once(request).millis;
        }
        Arrays.sort(millis);
        return new Point(millis[RUNS / 2], first.proven);
    }

    private static Point once(PlanRequest request) {
        long start = System.nanoTime();
        PlanResult result = new BatchPlanner().plan(request);
        return new Point((System.nanoTime() - start) / 1_000_000, !(result instanceof PlanResult.GaveUp));
    }
}
