package batchwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/**
 * Run by {@code mvn -B -Pbench verify}, never with the tests: it takes about an hour. Writes {@code target/benchmark/table.md} and
 * {@code target/benchmark/growth.svg}.
 */
class PlanBenchmark {
    private static final Path FOLDER = Path.of("target", "benchmark");
    private static final String LIMIT_SECONDS = System.getProperty("batchwright.limit", "30");
    /** Whatever its own limit says: then it is stopped. */
    private static final long LONGEST_MINUTES = 2;

    private static final String CLASSES =
            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));

    @Test
    void compared_with_solvers_from_elsewhere() throws IOException, InterruptedException {
        List<String> lines = new ArrayList<>();
        lines.add("| size | solver | cold, s | warm, s | answer |");
        lines.add("|---|---|--:|--:|---|");
        for (String size : Sizes.compared().keySet()) {
            for (Contestant solver : Contestant.values()) {
                lines.add("| " + size + " | " + solver.title() + " | " + row(solver, size) + " |");
                write("table.md", String.join("\n", lines) + "\n");
            }
        }
        assertThat(lines).noneMatch(line -> line.contains("broke down"));
    }

    @Test
    void growth_of_our_search() throws IOException {
        Map<String, Map<Integer, Growth.Point>> growth = Growth.measured();
        write("growth.svg", GrowthPlot.of(growth));
        assertThat(growth).isNotEmpty();
    }

    private static String row(Contestant solver, String size) throws IOException, InterruptedException {
        Path out = Files.createTempFile("batchwright", ".out");
        Process process = new ProcessBuilder(
                        "java",
                        "-cp",
                        CLASSES,
                        OneRun.class.getName(),
                        solver.name(),
                        size,
                        LIMIT_SECONDS,
                        out.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (!process.waitFor(LONGEST_MINUTES, TimeUnit.MINUTES)) {
            process.destroyForcibly().waitFor();
            return "| | did not stop within " + LONGEST_MINUTES + " minutes";
        }
        String answer = Files.readString(out);
        Files.delete(out);
        String[] cells = answer.split("\t", -1);
        return cells.length < 3
                ? "| | broke down"
                : seconds(cells[0]) + " | " + (cells[1].isEmpty() ? "" : seconds(cells[1])) + " | " + cells[2];
    }

    private static String seconds(String millis) {
        return String.format(java.util.Locale.ROOT, "%.3f", Long.parseLong(millis) / 1000.0);
    }

    private static void write(String name, String text) throws IOException {
        Files.createDirectories(FOLDER);
        Files.writeString(FOLDER.resolve(name), text);
        System.out.println(text);
    }
}
