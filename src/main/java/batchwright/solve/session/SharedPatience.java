package batchwright.solve.session;

import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.plan.Session;
import batchwright.plan.Watch;
import batchwright.quantity.Money;
import java.time.Duration;
import java.util.Map;
import java.util.function.ObjIntConsumer;

/** Asks a planner several questions within one patience: each may take an equal share of the time that is left. */
final class SharedPatience {
    private static final Duration LEAST = Duration.ofMillis(1);
    /** Its bound is soon good; a long search adds little, and takes much memory where money is finely divided. */
    private static final Duration FOR_A_BOUND = Duration.ofSeconds(4);

    private final Planner planner;
    /** What is found of one session is not found of the whole. */
    private final Watch onlyStopping;

    private final long start = System.nanoTime();
    private final Duration patience;
    private int sharesLeft;
    private long nodes;

    SharedPatience(Planner planner, Watch watch, Duration patience, int shares) {
        this.planner = planner;
        this.onlyStopping = new Watch.StopOnly(watch);
        this.patience = patience;
        this.sharesLeft = shares;
    }

    PlanResult plan(PlanRequest request) {
        return plan(request, share());
    }

    private PlanResult plan(PlanRequest request, Duration time) {
        PlanResult result = planner.plan(request.withPatience(time), onlyStopping);
        sharesLeft = Math.max(1, sharesLeft - 1);
        nodes += result.proof().nodes();
        return result;
    }

    boolean impossible(PlanRequest request) {
        return planner.possible(request.withPatience(share()), onlyStopping) == Planner.Possible.NO;
    }

    /**
     * No sessions cost less than this.
     *
     * @param seen told the session that was found for a question, and how often it counts
     */
    Money bound(Map<PlanRequest, Integer> questions, ObjIntConsumer<Session> seen) {
        long parts = 0;
        for (Map.Entry<PlanRequest, Integer> question : questions.entrySet()) {
            int times = question.getValue();
            Duration time = share();
            PlanResult result = plan(question.getKey(), time.compareTo(FOR_A_BOUND) < 0 ? time : FOR_A_BOUND);
            parts += result.proof().lowerBound().minor() * times;
            result.best().ifPresent(plan -> seen.accept(plan.first(), times));
        }
        return EachAlone.cents(parts);
    }

    /** Of the whole: all that was spent so far. */
    Proof proof(Money cost, Money bound) {
        return new Proof(cost, bound, nodes, spent());
    }

    private Duration spent() {
        return Duration.ofNanos(System.nanoTime() - start);
    }

    private Duration share() {
        Duration share = patience.minus(spent()).dividedBy(sharesLeft);
        return share.compareTo(LEAST) < 0 ? LEAST : share;
    }
}
