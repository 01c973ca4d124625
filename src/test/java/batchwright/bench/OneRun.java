package batchwright.bench;

import batchwright.plan.PlanRequest;
import batchwright.solve.whole.WholeModel;
import com.google.ortools.Loader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Objects;

/**
 * One solver on one size, in a process of its own: first cold, then warm. Writes one line of cold milliseconds, median of the
 * warm ones, how many those are, and the answer.
 */
final class OneRun {
    private static final int WARM_UP = 4;
    private static final int RUNS = 11;
    /** What takes longer cold is not repeated: it would take hours, and warming up hardly changes it. */
    private static final long LONG_MILLIS = 6_000;

    private OneRun() {}

    /** Arguments: solver, size, limit in seconds, file for the line. */
    public static void main(String[] args) throws IOException {
        Contestant solver = Contestant.valueOf(args[0]);
        PlanRequest request = Objects.requireNonNull(Sizes.compared().get(args[1]));
        Duration limit = Duration.ofSeconds(Long.parseLong(args[2]));
        String mps =
                solver == Contestant.BATCHWRIGHT ? "" : WholeModel.of(request).mps();
        // Unpacking the other solvers' native code is no part of their work.
        Loader.loadNativeLibraries();
        long start = System.nanoTime();
        Contestant.Answer answer = solver.solve(request, mps, limit);
        long cold = millisSince(start);
        int runs = cold > LONG_MILLIS ? 0 : RUNS;
        for (int k = 0; runs > 0 && k < WARM_UP; k++) {
            solver.solve(request, mps, limit);
        }
        long[] warm = new long[runs];
        for (int k = 0; k < runs; k++) {
            start = System.nanoTime();
            solver.solve(request, mps, limit);
            warm[k] = millisSince(start);
        }
        Arrays.sort(warm);
        // Not to the console: HiGHS fills that with gigabytes for some models.
        Files.writeString(Path.of(args[3]), cold + "\t" + (runs == 0 ? "" : warm[runs / 2]) + "\t" + answer.text());
    }

    private static long millisSince(long start) {
        return (System.nanoTime() - start) / 1_000_000;
    }
}
