package batchwright.bench;

import batchwright.plan.PlanRequest;
import batchwright.plan.Proof;
import batchwright.solve.BatchPlanner;
import batchwright.solve.whole.OutsideSolver;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.OptionalDouble;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;

/** A solver in the benchmark. Ours gets the request; the others the MPS text that {@code plan --model} writes of it. */
enum Contestant {
    BATCHWRIGHT("Batchwright", true) {
        @Override
        Answer solve(PlanRequest request, String mps, Duration limit) {
            return new BatchPlanner()
                    .plan(request.withPatience(limit))
                    .match(new batchwright.plan.PlanResult.Cases<>() {
                        @Override
                        public Answer planned(batchwright.plan.PlanResult.Planned planned) {
                            return Answer.proven(planned.plan().cost().minor());
                        }

                        @Override
                        public Answer noPlan(batchwright.plan.PlanResult.NoPlan none) {
                            return new Answer("no plan");
                        }

                        @Override
                        public Answer gaveUp(batchwright.plan.PlanResult.GaveUp gaveUp) {
                            Proof proof = gaveUp.proof();
                            String best = gaveUp.best()
                                    .map(plan -> "best " + plan.cost().minor())
                                    .orElse("none");
                            return new Answer(
                                    best + ", bound " + proof.lowerBound().minor());
                        }
                    });
        }
    },
    HIGHS("HiGHS", true),
    SCIP("SCIP", true),
    OJALGO("ojAlgo", true) {
        @Override
        Answer solve(PlanRequest request, String mps, Duration limit) {
            ExpressionsBasedModel model = parsed(mps);
            model.options.time_abort = limit.toMillis();
            model.options.time_suffice = limit.toMillis();
            Optimisation.Result result = model.minimise();
            return result.getState() == Optimisation.State.OPTIMAL
                    ? Answer.proven(Math.round(result.getValue()))
                    : new Answer(result.getState().toString().toLowerCase(java.util.Locale.ROOT));
        }
    },
    CBC("CBC", false),
    GLPK("GLPK", false);

    private final String title;
    private final boolean inProcess;

    /**
     * What a solver says.
     *
     * @param text the cost in cents when it is proven, else what is known
     */
    record Answer(String text) {
        static Answer proven(long cents) {
            return new Answer("proven " + cents);
        }

        boolean isProven() {
            return text.startsWith("proven ");
        }
    }

    Contestant(String title, boolean inProcess) {
        this.title = title;
        this.inProcess = inProcess;
    }

    /** An {@link OutsideSolver} of the same name, unless it says otherwise. */
    Answer solve(PlanRequest request, String mps, Duration limit) {
        return outside(OutsideSolver.valueOf(name()), mps, limit);
    }

    String title() {
        return title + (inProcess ? "" : " (process)");
    }

    private static Answer outside(OutsideSolver solver, String mps, Duration limit) {
        try {
            OptionalDouble cost = solver.solve(mps, limit);
            return cost.isPresent() ? Answer.proven(Math.round(cost.getAsDouble())) : new Answer("no plan");
        } catch (IllegalStateException unfinished) {
            return new Answer("not finished");
        }
    }

    private static ExpressionsBasedModel parsed(String mps) {
        try {
            Path file = Files.createTempFile("batchwright", ".mps");
            try {
                return ExpressionsBasedModel.parse(Files.writeString(file, mps).toFile());
            } finally {
                Files.delete(file);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
