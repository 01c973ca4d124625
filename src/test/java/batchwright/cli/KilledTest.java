package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The program, killed without warning about when it writes: after its answer, or when the first file of its own appears. */
@EnabledOnOs(OS.LINUX)
@Timeout(300)
class KilledTest {
    private static final int RUNS = 6;
    private static final int MOST_MILLIS = 120;
    private static final String PLAN = "plan parent-holding --date 2026-11-25 --cook lentil_ragu --days ";

    @TempDir
    Path here;

    @TempDir
    Path outside;

    private final Random random = new Random(20261130);

    @FunctionalInterface
    private interface Moment {
        boolean isNow() throws IOException;
    }

    private void killed(String command, Moment moment) throws Exception {
        Process process = Shell.start(here, outside.resolve("out"), outside.resolve("err"), command);
        while (process.isAlive() && !moment.isNow()) {
            Thread.sleep(1);
        }
        Thread.sleep(random.nextInt(MOST_MILLIS));
        process.destroyForcibly();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    }

    private boolean isAnswered() throws IOException {
        return Files.exists(outside.resolve("out")) && Files.size(outside.resolve("out")) > 0;
    }

    private boolean isBegun() throws IOException {
        try (Stream<Path> entries = Files.list(here)) {
            return entries.anyMatch(entry -> entry.getFileName().toString().startsWith(".batchwright-"));
        }
    }

    @Test
    void a_report_is_the_old_one_or_the_new_one() throws Exception {
        assertThat(Shell.run(here, "bw " + PLAN + "1 --report r.html --shopping s.csv")
                        .code())
                .isZero();
        String oldReport = Files.readString(here.resolve("r.html"));
        String oldList = Files.readString(here.resolve("s.csv"));
        Files.writeString(here.resolve("notes.txt"), "mine");

        for (int run = 0; run < RUNS; run++) {
            killed(PLAN + "2 --report r.html --shopping s.csv", this::isAnswered);

            String report = Files.readString(here.resolve("r.html"));
            assertThat(report.equals(oldReport)
                            || (report.contains("<bdi>2 days for Parent") && report.endsWith("</html>\n")))
                    .as("run %d: %d characters", run, report.length())
                    .isTrue();
            String list = Files.readString(here.resolve("s.csv"));
            assertThat(list.equals(oldList) || (list.startsWith("shop_on,") && list.endsWith("\r\n")))
                    .isTrue();
            assertThat(here.resolve("notes.txt")).hasContent("mine");
        }
        assertThat(Shell.run(here, "bw " + PLAN + "2 --report r.html --shopping s.csv")
                        .code())
                .isZero();
    }

    @Test
    void a_kitchen_is_there_whole_or_not_at_all_and_can_be_made_then() throws Exception {
        Path whole = outside.resolve("whole");
        Folders.starter(whole);
        Map<String, String> starter = Folders.content(whole);

        for (int run = 0; run < RUNS; run++) {
            String name = "k" + run;
            killed("init " + name, this::isBegun);

            if (Files.exists(here.resolve(name))) {
                assertThat(Folders.content(here.resolve(name))).isEqualTo(starter);
            }
            Cli.Result again = Cli.in(here).run("init", name);
            assertThat(again.code()).isZero();
            assertThat(Folders.content(here.resolve(name))).isEqualTo(starter);
        }
    }
}
