package batchwright.spark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The job on Spark, in real processes: what is right for a client is what {@code roster} answers for the same list, computed by it here. */
class RosterJobTest {
    private static final int CLIENTS = 16;
    private static final String DAY = "2026-11-30";
    private static final List<String> GOALS = List.of("hold", "gain 0.25 % a week", "lose 0.5 % a week");
    private static final List<String> DISHES = List.of("lentil_ragu,egg_muffins", "lentil_ragu,peanut_stew,egg_muffins");

    @TempDir
    static Path here;

    private static List<String> expected = List.of();

    @BeforeAll
    static void answeredByTheProgram() throws IOException, InterruptedException {
        Files.write(here.resolve("clients.jsonl"), clients());
        program("init", "kitchen");
        program("roster", "clients.jsonl", "--out", "expected.jsonl", "--effort", "1", "--date", DAY, "--data", "kitchen");
        expected = sorted(Files.readAllLines(here.resolve("expected.jsonl")));
        assertThat(expected).hasSize(CLIENTS + 4);
        assertThat(expected.stream().filter(line -> line.contains("\"status\":\"planned\"")))
                .hasSizeGreaterThan(CLIENTS / 2);
    }

    private static void program(String... arguments) throws IOException, InterruptedException {
        try (SparkProcess program = SparkProcess.program(here, arguments)) {
            assertThat(program.code()).as(program.says()).isIn(0, 2);
        }
    }

    /** Each alone, then two who share a pot and stand apart from nobody, a line that is not JSON, and one that says too little. */
    private static List<String> clients() {
        List<String> lines = new ArrayList<>();
        for (int number = 0; number < CLIENTS; number++) {
            lines.add(client("c-" + number, number, ""));
        }
        lines.add(client("p-1", 3, ",\"pot\":\"one\""));
        lines.add(client("p-2", 7, ",\"pot\":\"one\""));
        lines.add("{\"client\":\"torn");
        lines.add("{\"client\":\"short\",\"age\":30}");
        return lines;
    }

    private static String client(String id, int number, String more) {
        return String.format(
                Locale.ROOT,
                "{\"client\":\"%s\",\"days\":2,\"dishes\":2,\"cook\":\"%s\",\"sex\":\"%s\",\"age\":%d,\"weight\":\"%d kg\","
                        + "\"height\":\"172 cm\",\"activity\":\"active\",\"goal\":\"%s\",\"health\":\"none\",\"strength_training\":\"no\"%s}",
                id,
                more.isEmpty() ? DISHES.get(number % DISHES.size()) : DISHES.get(0),
                number % 2 == 0 ? "female" : "male",
                25 + number,
                64 + number % 9,
                GOALS.get(number % GOALS.size()),
                more);
    }

    /** Enough to see who was answered what, should a test fail. */
    private static List<String> beginnings(List<String> lines) {
        return lines.stream().map(line -> line.substring(0, Math.min(150, line.length()))).toList();
    }

    private static List<String> sorted(List<String> lines) {
        return lines.stream().sorted().toList();
    }

    private static List<String> linesIn(Path folder) throws IOException {
        List<String> lines = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.getFileName().toString().startsWith("part-")).toList()) {
                lines.addAll(Files.readAllLines(file));
            }
        }
        return sorted(lines);
    }

    @Test
    void lines_in_and_out_are_those_of_roster() throws IOException, InterruptedException {
        try (SparkProcess job =
                SparkProcess.job(here, "local[2]", "clients.jsonl", "answers", "--effort", "1", "--date", DAY, "--task", "6")) {
            assertThat(job.code()).as(job.says()).isZero();
            assertThat(job.says()).contains((CLIENTS + 4) + " answered", "the kitchen was read 1 times");
        }
        assertThat(beginnings(linesIn(here.resolve("answers")))).isEqualTo(beginnings(expected));
        assertThat(linesIn(here.resolve("answers")).equals(expected)).as("the same lines").isTrue();
    }

    @Test
    void parquet_in_and_out_says_the_same() throws IOException, InterruptedException {
        try (SparkSession spark =
                SparkSession.builder().master("local[1]").config("spark.ui.enabled", false).getOrCreate()) {
            spark.read().json(here.resolve("clients.jsonl").toString()).where("client is not null").drop("_corrupt_record").coalesce(1)
                    .write().parquet(here.resolve("clients.parquet").toString());
            try (SparkProcess job = SparkProcess.job(
                    here, "local[2]", "clients.parquet", "answers.parquet", "--effort", "1", "--date", DAY)) {
                assertThat(job.code()).as(job.says()).isZero();
            }
            List<Row> rows = spark.read().parquet(here.resolve("answers.parquet").toString()).collectAsList();

            List<String> answers = rows.stream().map(row -> withoutNumber(row.getString(2))).sorted().toList();
            List<String> readable = expected.stream().filter(line -> !line.contains("\"client\":null"))
                    .map(RosterJobTest::withoutNumber).sorted().toList();
            assertThat(beginnings(answers)).isEqualTo(beginnings(readable));
            assertThat(answers.equals(readable)).as("the same lines").isTrue();
            assertThat(rows).allSatisfy(row -> assertThat(row.getString(2)).contains("\"" + row.getString(0) + "\""));
        }
    }

    /** The lines of a table have numbers of their own. */
    private static String withoutNumber(String line) {
        return line.replaceFirst("\"line\":\\d+", "").replaceAll("client-\\d+", "client");
    }

    @Test
    void a_worker_that_dies_costs_no_client_and_none_is_answered_twice() throws IOException, InterruptedException {
        try (SparkProcess master =
                SparkProcess.spark(here, "master.Master", "--host", "127.0.0.1", "--port", "0", "--webui-port", "0")) {
            String address = master.until(Pattern.compile("Starting Spark master at (spark://\\S+)")).group(1);
            try (SparkProcess first = worker("first", address);
                    SparkProcess second = worker("second", address)) {
                master.untilSaid(2, "Registering worker");
                try (SparkProcess job = SparkProcess.job(
                        here, address, "clients.jsonl", "of-cluster", "--effort", "1", "--date", DAY, "--task", "2",
                        "--data", here.resolve("kitchen").toString())) {
                    job.untilSaid(2, "Registered executor");
                    long before = job.count("Finished task");
                    job.untilSaid((int) before + 6, "Finished task");
                    first.kill();
                    assertThat(job.code()).as(job.says()).isZero();
                    assertThat(job.says()).contains("Lost executor");
                    assertThat(second.count("Launch")).isPositive();
                }
            }
        }
        assertThat(beginnings(linesIn(here.resolve("of-cluster")))).isEqualTo(beginnings(expected));
        assertThat(linesIn(here.resolve("of-cluster")).equals(expected)).as("the same lines").isTrue();
    }

    private static SparkProcess worker(String name, String master) throws IOException {
        return SparkProcess.spark(
                here, "worker.Worker", "--host", "127.0.0.1", "--port", "0", "--webui-port", "0", "--cores", "1", "--memory", "1g",
                "--work-dir", here.resolve(name).toString(), master);
    }
}
