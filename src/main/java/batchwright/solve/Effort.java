package batchwright.solve;

import batchwright.plan.Watch;
import batchwright.solve.mip.Completion.Found;
import batchwright.solve.mip.SearchResult;
import batchwright.solve.mip.StepBudget;
import batchwright.solve.mip.Stop;
import java.util.concurrent.atomic.AtomicLong;

/** What a search has spent, over all its levels, when it must stop, and what it had to leave out. */
final class Effort implements Stop {
    /** A side search may solve this many relaxations per node, on average. */
    private static final long TRIALS_OF_A_NODE = 10;

    private final Stop stop;
    private final Meter meter;
    private final AtomicLong nodes;
    private final ProofLedger ledger;
    private final SearchProgress progress;

    /** Ends when the meter says so. */
    Effort(Meter meter, Watch watch) {
        this(meter, meter, new AtomicLong(), new ProofLedger(), new SearchProgress(watch));
    }

    private Effort(Stop stop, Meter meter, AtomicLong nodes, ProofLedger ledger, SearchProgress progress) {
        this.stop = stop;
        this.meter = meter;
        this.nodes = nodes;
        this.ledger = ledger;
        this.progress = progress;
    }

    /** A part of this search that also stops when its own budget of nodes is spent, and can go on later. */
    @Override
    public Effort within(StepBudget budget) {
        return new Effort(stop.within(budget), meter, nodes, ledger, progress);
    }

    /** A side search of at most so many nodes. What it leaves out does not matter for the proof; what it spends counts. */
    Effort limited(long steps) {
        return side(stop.within(new StepBudget(steps)), meter);
    }

    /** A side search that ends when so many more relaxations are solved. What it proves does not hold for the whole. */
    Effort sideOfRelaxations(long relaxations) {
        long enough = nodes() + relaxations;
        return side(stop.or(() -> nodes() > enough), meter);
    }

    /** A side search that ends when so much work was done. What it leaves out and proves does not matter for the whole. */
    Effort sideOfWork(long work) {
        long enough = meter.work() + work;
        return side(stop.or(() -> meter.work() > enough), meter);
    }

    /** A side search of just so many nodes and so much work, whatever the clock says: its outcome depends on the files alone. */
    Effort steps(long steps, long mostWork) {
        var own = new Meter(work -> work > mostWork);
        return side(new StepsOnly(new StepBudget(steps), new StepBudget(TRIALS_OF_A_NODE * steps), own), own);
    }

    private Effort side(Stop ends, Meter metered) {
        return new Effort(ends, metered, nodes, new ProofLedger(), progress.ofPlansOnly());
    }

    @Override
    public boolean requested() {
        return stop.requested();
    }

    @Override
    public boolean urgent() {
        return stop.urgent();
    }

    @Override
    public void spendNode() {
        stop.spendNode();
    }

    @Override
    public void spendTrial() {
        stop.spendTrial();
    }

    @Override
    public void spend(long work) {
        stop.spend(work);
    }

    /** Keeps a whole plan, and tells whoever watches, if it is the cheapest so far. */
    void found(Found<DaysSolution> plan) {
        progress.found(plan);
    }

    /** The plans found so far. */
    Incumbents incumbents() {
        return progress.incumbents();
    }

    /** Tells whoever watches what is proven [cents], unless this is only a side search. */
    void proven(double bound) {
        progress.bound(ledger.bound(bound));
    }

    /** The greatest bound of the whole that was told so far [cents]. */
    double provenSoFar() {
        return progress.greatestBound();
    }

    /** Takes account of what a search has spent. */
    void count(SearchResult<?> search) {
        count(search.nodes());
    }

    /** Takes account of so many relaxations. */
    void count(long relaxations) {
        nodes.addAndGet(relaxations);
    }

    /** What was left out. */
    ProofLedger ledger() {
        return ledger;
    }

    /** Relaxations solved. */
    long nodes() {
        return nodes.get();
    }

    /**
     * Ends a search by what it does alone, never by the clock.
     *
     * @param nodes that may be looked at
     * @param trials relaxations that may be solved besides
     * @param meter all work; ends what is too large for a single node
     */
    private record StepsOnly(StepBudget nodes, StepBudget trials, Meter meter) implements Stop {
        @Override
        public boolean requested() {
            return nodes.isSpent();
        }

        @Override
        public boolean urgent() {
            return trials.isSpent();
        }

        @Override
        public void spendNode() {
            nodes.spend();
        }

        @Override
        public void spendTrial() {
            trials.spend();
        }

        @Override
        public void spend(long work) {
            meter.spend(work);
        }
    }
}
