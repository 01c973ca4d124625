package batchwright.cli;

import batchwright.app.MakePlan;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.plan.Watch;
import batchwright.quantity.Money;
import batchwright.solve.BatchPlanner;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;

/** The program with a planner that finds its plan soon, says "searching" and then proves nothing until it is told to stop. */
final class SlowSearch {
    private SlowSearch() {}

    /** What the planner is like. */
    enum Kind {
        WITH_A_PLAN,
        WITHOUT_A_PLAN,
        DEAF
    }

    /** @param args the kind, then the command line */
    public static void main(String[] args) {
        var terminal = new Terminal(
                new AnswerStream(System.out, () -> false),
                System.err,
                Optional.empty(),
                () -> true,
                OptionalInt::empty,
                false);
        var command = Arrays.copyOfRange(args, 1, args.length);
        var planner = new Slow(Kind.valueOf(args[0]), System.err);
        System.exit(Main.run(command, terminal, new MakePlan(planner), Path.of(""), Clock.systemUTC()));
    }

    private record Slow(Kind kind, PrintStream err) implements Planner {
        @Override
        public PlanResult plan(PlanRequest request) {
            throw new UnsupportedOperationException("nobody watches");
        }

        @Override
        public PlanResult plan(PlanRequest request, Watch watch) {
            Optional<PlanResult.Planned> found = kind == Kind.WITHOUT_A_PLAN
                    ? Optional.empty()
                    : Optional.of((PlanResult.Planned) new BatchPlanner().plan(request));
            found.ifPresent(f -> watch.found(f.plan().cost()));
            watch.bound(new Money(100));
            err.println("searching");
            while (kind == Kind.DEAF || !watch.stop()) {
                Thread.onSpinWait();
            }
            var proof = found.map(f -> new Proof(
                            f.plan().cost(), new Money(100), 7, f.plan().proof().took()))
                    .orElse(Proof.NONE);
            return new PlanResult.GaveUp(found.map(f -> Plan.of(f.plan().first().withProof(proof))), proof);
        }

        @Override
        public Possible possible(PlanRequest request) {
            return Possible.UNKNOWN;
        }
    }
}
