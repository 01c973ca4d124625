package batchwright.solve.whole;

import com.google.ortools.Loader;
import com.google.ortools.modelbuilder.ModelBuilder;
import com.google.ortools.modelbuilder.ModelSolver;
import com.google.ortools.modelbuilder.SolveStatus;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Solvers from elsewhere, given nothing but the MPS text. Each answers with the least cost; empty when there is no solution. */
public enum OutsideSolver {
    /** glpsol of Debian's glpk-utils, as a process. */
    GLPK("glpsol") {
        @Override
        OptionalDouble solve(Path mps, Path folder, Duration limit) {
            Path out = folder.resolve("glpk.txt");
            String seconds = Long.toString(limit.toSeconds());
            run(
                    folder,
                    limit,
                    command,
                    "--freemps",
                    mps.toString(),
                    "--cuts",
                    "--tmlim",
                    seconds,
                    "-o",
                    out.toString());
            if (read(folder.resolve(LOG)).contains("TIME LIMIT EXCEEDED")) {
                throw new IllegalStateException("glpsol did not finish in time");
            }
            String answer = read(out);
            if (answer.contains("INTEGER EMPTY")
                    || answer.contains("INFEASIBLE (FINAL)")
                    || answer.contains("UNDEFINED")) {
                return OptionalDouble.empty();
            }
            if (!answer.contains("INTEGER OPTIMAL") && !answer.contains("Status:     OPTIMAL")) {
                throw new IllegalStateException(
                        "glpsol did not finish: " + answer.lines().limit(6).toList());
            }
            return OptionalDouble.of(number(answer, "Objective:\\s+COST = (\\S+)"));
        }
    },
    /**
     * cbc of Debian's coinor-cbc, as a process. Without its preprocessing and cuts: with them version 2.10.8 loses the cheapest plan of
     * a model in a hundred (245 where all others, and cbc without them, find 186; 1980 instead of 1669). Without them it breaks
     * down over a few models that have no plan; those are given to it as it comes.
     */
    CBC("cbc") {
        private static final Pattern NONE = Pattern.compile("^(Infeasible|Integer infeasible)");

        @Override
        OptionalDouble solve(Path mps, Path folder, Duration limit) {
            Path out = folder.resolve("cbc.txt");
            String answer = answer(mps, folder, out, limit, List.of("preprocess", "off", "cuts", "off"));
            if (answer.isEmpty()) {
                answer = answer(mps, folder, out, limit, List.of());
            }
            if (NONE.matcher(answer).find()) {
                return OptionalDouble.empty();
            }
            if (!answer.startsWith("Optimal")) {
                throw new IllegalStateException(
                        "cbc did not finish: " + answer.lines().limit(1).toList());
            }
            return OptionalDouble.of(number(answer, "objective value (\\S+)"));
        }

        private String answer(Path mps, Path folder, Path out, Duration limit, List<String> settings) {
            List<String> line = new ArrayList<>(List.of(command, mps.toString(), "ratioGap", "0", "allowableGap", "0"));
            line.addAll(settings);
            line.addAll(List.of("seconds", Long.toString(limit.toSeconds()), "solve", "solu", out.toString()));
            run(folder, limit, line.toArray(new String[0]));
            return Files.exists(out) ? read(out) : "";
        }
    },
    /**
     * SCIP of OR-Tools, in this process. Its special form of rows with two columns is left out: with it SCIP once called optimal a
     * plan whose days miss the energy band by 2.5 kcal (8086 where all others, and SCIP without it, find 8270).
     */
    SCIP("") {
        @Override
        OptionalDouble solve(Path mps, Path folder, Duration limit) {
            return inProcess("scip", "constraints/linear/upgrade/varbound = FALSE", mps, limit);
        }
    },
    /** HiGHS of OR-Tools, in this process. Lines on stderr about the index of a row name are its own and mean nothing. */
    HIGHS("") {
        @Override
        OptionalDouble solve(Path mps, Path folder, Duration limit) {
            return inProcess("highs", "", mps, limit);
        }
    };

    private static final Duration LONG_ENOUGH = Duration.ofSeconds(60);
    private static final String LOG = "log.txt";
    private static final boolean REQUIRED = "required".equals(System.getProperty("batchwright.cross-checks"));

    final String command;

    OutsideSolver(String command) {
        this.command = command;
    }

    abstract OptionalDouble solve(Path mps, Path folder, Duration limit);

    private static OptionalDouble inProcess(String name, String settings, Path mps, Duration limit) {
        Loader.loadNativeLibraries();
        var model = new ModelBuilder();
        if (!model.importFromMpsString(read(mps))) {
            throw new IllegalStateException("OR-Tools cannot read " + mps);
        }
        var solver = new ModelSolver(name);
        solver.setSolverSpecificParameters(settings);
        solver.setTimeLimit(limit);
        SolveStatus status = solver.solve(model);
        if (status == SolveStatus.INFEASIBLE) {
            return OptionalDouble.empty();
        }
        if (status != SolveStatus.OPTIMAL) {
            throw new IllegalStateException(name + " did not finish: " + status);
        }
        return OptionalDouble.of(solver.getObjectiveValue());
    }

    /** The least cost by the text alone; empty when there is no solution. */
    public OptionalDouble solve(String mps) {
        return solve(mps, LONG_ENOUGH);
    }

    /**
     * The same within a time [whole seconds].
     *
     * @throws IllegalStateException when that is not enough
     */
    public OptionalDouble solve(String mps, Duration limit) {
        try {
            Path folder = Files.createTempDirectory("batchwright-model");
            try {
                return solve(Files.writeString(folder.resolve("plan.mps"), mps), folder, limit);
            } finally {
                try (Stream<Path> files = Files.list(folder)) {
                    for (Path file : files.toList()) {
                        Files.delete(file);
                    }
                }
                Files.delete(folder);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /**
     * Whether it can be asked. Where cross-checks are required it always can, or the test fails when it is asked.
     *
     * @see #missing
     */
    public boolean isThere() {
        return REQUIRED
                || command.isEmpty()
                || Stream.of(System.getenv("PATH").split(File.pathSeparator))
                        .anyMatch(folder -> Files.isExecutable(Path.of(folder, command)));
    }

    /** Why a test is skipped. */
    public String missing() {
        return command + " is not installed: .ci/run does that; with -Dbatchwright.cross-checks=required this fails";
    }

    private static void run(Path folder, Duration limit, String... command) {
        try {
            List<String> all = new ArrayList<>(List.of(command));
            Process process = new ProcessBuilder(all)
                    .redirectErrorStream(true)
                    .redirectOutput(folder.resolve(LOG).toFile())
                    .start();
            if (!process.waitFor(2 * limit.toSeconds(), TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new IllegalStateException(all + " does not end.");
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static double number(String text, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        if (!matcher.find()) {
            throw new IllegalStateException(
                    "no objective in: " + text.lines().limit(8).toList());
        }
        return Double.parseDouble(matcher.group(1));
    }
}
