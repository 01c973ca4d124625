package batchwright.solve;

import batchwright.plan.Watch;
import batchwright.solve.mip.Completion.Found;
import batchwright.solve.mip.SearchResult;
import batchwright.solve.mip.Stop;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;

/** What a search has spent, over all its levels, when it must stop, and what it had to leave out. */
final class Effort implements Stop {
    /** A side search may be asked so often within its nodes, on the average, whether to stop at once. */
    private static final long STEPS_WITHIN_A_NODE = 10;

    private final BooleanSupplier stop;
    private final BooleanSupplier urgent;
    private final Meter meter;
    private final AtomicLong nodes;
    private final double[] leastLeftOut;
    private final Told told;

    /** Ends when the meter says so. */
    Effort(Meter meter, Watch watch) {
        this(meter::isOver, meter::isOver, meter, new AtomicLong(), nothingLeftOut(), new Told(watch));
    }

    private Effort(
            BooleanSupplier stop,
            BooleanSupplier urgent,
            Meter meter,
            AtomicLong nodes,
            double[] leastLeftOut,
            Told told) {
        this.stop = stop;
        this.urgent = urgent;
        this.meter = meter;
        this.nodes = nodes;
        this.leastLeftOut = leastLeftOut;
        this.told = told;
    }

    private static double[] nothingLeftOut() {
        return new double[] {Double.POSITIVE_INFINITY};
    }

    /** A side search of at most so many steps. What it leaves out does not matter for the proof; what it spends counts. */
    Effort limited(long steps) {
        long[] left = {steps};
        return side(() -> left[0]-- <= 0);
    }

    /** A part of this search that stops for a reason of its own, too, and can go on later. */
    Effort until(BooleanSupplier also) {
        return new Effort(() -> also.getAsBoolean() || now(), urgent, meter, nodes, leastLeftOut, told);
    }

    /** A side search that stops for a reason of its own, too. What it leaves out and proves does not matter for the whole. */
    Effort side(BooleanSupplier also) {
        return new Effort(
                () -> also.getAsBoolean() || now(), urgent, meter, nodes, nothingLeftOut(), told.ofPlansOnly());
    }

    /** A side search that stops when so much work was done. What it leaves out and proves does not matter for the whole. */
    Effort sideOfWork(long work) {
        long enough = meter.work() + work;
        return side(() -> meter.work() > enough);
    }

    /** A side search of just so many steps and so much work, whatever the clock says: its outcome depends on the files alone. */
    Effort steps(long steps, long mostWork) {
        long[] left = {steps};
        long[] within = {STEPS_WITHIN_A_NODE * steps};
        return new Effort(
                () -> left[0]-- <= 0,
                () -> within[0]-- <= 0,
                new Meter(work -> work > mostWork),
                nodes,
                nothingLeftOut(),
                told.ofPlansOnly());
    }

    @Override
    public boolean now() {
        return stop.getAsBoolean();
    }

    @Override
    public boolean atOnce() {
        return urgent.getAsBoolean();
    }

    @Override
    public void spend(long work) {
        meter.spend(work);
    }

    /** Keeps a whole plan, and tells whoever watches, if it is the cheapest so far. */
    void found(Found<DaysSolution> plan) {
        told.found(plan);
    }

    /** The plans found so far. */
    Incumbents incumbents() {
        return told.incumbents();
    }

    /** Tells whoever watches what is proven [cents], unless this is only a side search. */
    void proven(double bound) {
        told.bound(Math.min(bound, leastLeftOut()));
    }

    /** Takes account of what a search has spent. */
    void count(SearchResult<?> search) {
        count(search.nodes());
    }

    /** Takes account of so many relaxations. */
    void count(long relaxations) {
        nodes.addAndGet(relaxations);
    }

    /** Something that a proof would have needed was left out; nothing in it costs less than the bound. */
    void leaveOut(double bound) {
        leastLeftOut[0] = Math.min(leastLeftOut[0], bound);
    }

    /** Nothing that was left out costs less than this; infinite when everything was seen. */
    double leastLeftOut() {
        return leastLeftOut[0];
    }

    /** Relaxations solved. */
    long nodes() {
        return nodes.get();
    }
}
