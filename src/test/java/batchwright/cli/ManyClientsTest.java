package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * A list of many invented clients, on request: {@code -Dbatchwright.clients=1000}. Prints how long it takes by threads, how many plans are proven, and
 * how much memory is in use at most, with as many clients and with a hundred times as many that are refused without a search.
 */
@EnabledIfSystemProperty(named = "batchwright.clients", matches = "\\d+")
class ManyClientsTest {
    private static final int MANY = Integer.getInteger("batchwright.clients", 1000);
    private static final List<String> GOALS =
            List.of("hold", "gain 0.25 % a week", "gain 0.4 kg a week", "lose 0.5 % a week", "lose 0.4 kg a week");
    private static final List<String> DAYS = List.of("sedentary", "active", "vigorous");
    private static final List<String> AVOID = List.of("", "", "", "pork", "vegetarian", "peanut");

    @TempDir
    Path here;

    @BeforeEach
    void kitchen() {
        Folders.starter(here);
    }

    /** Bodies of a seed: sizes as adults have them, goals as people ask for them; who trains hard needs more than three containers hold. */
    private static String client(int number, boolean adult) {
        var random = new Random(number);
        boolean male = random.nextBoolean();
        double height = (male ? 178 : 165) + 7 * random.nextGaussian();
        double bmi = 21 + 7 * random.nextDouble();
        String day = DAYS.get(random.nextInt(DAYS.size()));
        return String.format(
                Locale.ROOT,
                "c-%d,5,%s,%d,%.1f kg,%.0f cm,%s,%s,none,%s,%s,%d",
                number,
                male ? "male" : "female",
                adult ? 20 + random.nextInt(40) : 15,
                bmi * height * height / 10_000,
                height,
                day,
                GOALS.get(random.nextInt(GOALS.size())),
                random.nextBoolean() ? "3 times a week" : "no",
                AVOID.get(random.nextInt(AVOID.size())),
                day.equals("vigorous") ? 4 : 3);
    }

    private void list(int clients, boolean adults) throws IOException {
        Files.writeString(
                here.resolve("clients.csv"),
                "client,days,sex,age,weight,height,activity,goal,health,strength_training,avoid,containers_a_day\n"
                        + IntStream.range(0, clients)
                                .mapToObj(number -> client(number, adults))
                                .collect(Collectors.joining("\n")));
    }

    /** Of all threads of this process [ns]. */
    private static long cpu() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }

    private static Stream<MemoryPoolMXBean> heap() {
        return ManagementFactory.getMemoryPoolMXBeans().stream().filter(pool -> pool.getType() == MemoryType.HEAP);
    }

    /** Runs the list, and says how it went. */
    private void run(String threads) throws IOException {
        System.gc();
        heap().forEach(MemoryPoolMXBean::resetPeakUsage);
        long cpuBegun = cpu();
        long begun = System.nanoTime();
        Cli.Result result = Cli.in(here)
                .run(
                        "roster",
                        "clients.csv",
                        "--out",
                        "answers.jsonl",
                        "--threads",
                        threads,
                        "--effort",
                        "2",
                        "--force");
        double seconds = (System.nanoTime() - begun) / 1e9;
        double cpuSeconds = (cpu() - cpuBegun) / 1e9;
        long peak = heap().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
        try (Stream<String> lines = Files.lines(here.resolve("answers.jsonl"))) {
            System.out.printf(
                    Locale.ROOT,
                    "%s threads: %.1f s, %.1f s of CPU, %d proven; heap at most %d MB; %s",
                    threads,
                    seconds,
                    cpuSeconds,
                    lines.filter(line -> line.contains("\"proven_cheapest\":true"))
                            .count(),
                    peak >> 20,
                    result.err());
        }
    }

    @Test
    void one_and_two_threads() throws IOException {
        list(MANY, true);
        run("1");
        byte[] one = Files.readAllBytes(here.resolve("answers.jsonl"));
        run("2");

        assertThat(here.resolve("answers.jsonl")).hasBinaryContent(one);
        try (Stream<String> lines = Files.lines(here.resolve("answers.jsonl"))) {
            assertThat(lines.map(line -> line.replaceAll("^.*?\"client\":\"(.*?)\".*$", "$1")))
                    .doesNotHaveDuplicates()
                    .hasSize(MANY);
        }
    }

    @Test
    void a_hundred_times_as_many_lines_need_no_more_memory() throws IOException {
        list(MANY, false);
        run("2");
        list(100 * MANY, false);
        run("2");
    }
}
