package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * However one of the starter files is damaged, every command ends soon: with its work done, or with exit 2 and the place of
 * the fault. Never with insides of the program, and never with a changed file. -Dbatchwright.seeds=20000 tries more.
 */
class CorruptionTest {
    private static final int SEEDS = Integer.getInteger("batchwright.seeds", 1000);
    private static final Duration MOST = Duration.ofSeconds(4);
    private static final int SHOWN = 20;
    private static final List<Locale> LANGUAGES = List.of(
            Locale.forLanguageTag("tr-TR"),
            Locale.forLanguageTag("ar-EG-u-nu-arab"),
            Locale.forLanguageTag("th-TH-u-ca-buddhist-nu-thai"));
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}&&[^\n]]");
    private static final Pattern LINE_AND_COLUMN = Pattern.compile("(?m)^[^:\n]+:\\d+:\\d+: error: ");
    /** Faults of a file as a whole; all others have a line and a column. */
    private static final Pattern WHOLE_FILE = Pattern.compile(
            "(?m)^[^:\n]+: error: (the file is written in UTF-16|the table is empty|the page is empty|this is a folder"
                    + "|there is no such file|this link (leads nowhere|cannot be followed)|this is no file but a pipe"
                    + "|the table has \\d+ lines|the file has more than 100,000 lines"
                    + "|the page is longer than 200,000 letters|this cannot be read as YAML|\\w+ is missing"
                    + "|\\d+ more errors? in this file)");

    private static final Pattern INSIDES =
            Pattern.compile("Exception|StackOverflow|OutOfMemory|\tat |batchwright\\.[a-z]+\\.|a fault of ours");

    @TempDir
    Path here;

    private final Map<String, byte[]> whole = new TreeMap<>();
    private final List<String> failures = new ArrayList<>();
    private String asItWas = "";
    private int refused;

    @BeforeEach
    void files() throws IOException {
        SmallStarter.into(here);
        assertThat(Cli.in(here).run("check").both()).isEmpty();
        for (String path : Folders.content(here).keySet()) {
            if (Files.isRegularFile(here.resolve(path))) {
                whole.put(path, Files.readAllBytes(here.resolve(path)));
            }
        }
        asItWas = Cli.in(here).run("dishes", "--json").out();
    }

    @Test
    @Timeout(value = 2, unit = TimeUnit.HOURS)
    void a_damaged_file_is_read_or_refused() throws IOException {
        var generators = RandomGeneratorFactory.of("L64X128MixRandom");
        List<Map.Entry<String, byte[]>> files = List.copyOf(whole.entrySet());
        for (int seed = 0; seed < SEEDS; seed++) {
            RandomGenerator random = generators.create(seed);
            Map.Entry<String, byte[]> file = files.get(random.nextInt(files.size()));
            String path = file.getKey();
            List<Damage> damages = Damage.of(path);
            Damage damage = damages.get(random.nextInt(damages.size()));
            Files.write(
                    here.resolve(path), damage.change().apply(file.getValue().clone(), random));
            tryAll(seed, "seed %s, %s in %s".formatted(seed, damage.name(), path), path, damage.harmless());
            Files.write(here.resolve(path), file.getValue());
        }
        assertThat(failures.stream().limit(SHOWN))
                .as("%s failures, the first %s", failures.size(), SHOWN)
                .isEmpty();
        assertThat(refused).as("most damage is noticed").isGreaterThan(SEEDS / 3);
    }

    /** Pipes, links, folders and files of other kitchens, each in another language of the system. */
    @Test
    @Timeout(value = 10, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void something_else_in_place_of_a_file() throws IOException {
        var random = RandomGeneratorFactory.of("L64X128MixRandom").create(1);
        Locale before = Locale.getDefault();
        try {
            for (Map.Entry<String, byte[]> file : whole.entrySet()) {
                Path path = here.resolve(file.getKey());
                for (InPlace other : InPlace.values()) {
                    Files.delete(path);
                    other.put(path, here.resolve(List.copyOf(whole.keySet()).get(random.nextInt(whole.size()))));
                    Locale.setDefault(LANGUAGES.get(random.nextInt(LANGUAGES.size())));
                    String what = other + " in place of " + file.getKey();
                    int code = run(what, "check");
                    expect(code == 2 || other == InPlace.MISSING || other == InPlace.OTHER, what, "not refused");
                    Files.deleteIfExists(path);
                    Files.write(path, file.getValue());
                }
            }
        } finally {
            Locale.setDefault(before);
        }
        assertThat(failures).isEmpty();
    }

    /** What stands where a file should be. */
    private enum InPlace {
        MISSING,
        FOLDER,
        PIPE,
        LINK_TO_NOTHING,
        LINK_TO_ITSELF,
        OTHER;

        /** @param other a file of the kitchen, perhaps this one */
        void put(Path path, Path other) throws IOException {
            switch (this) {
                case FOLDER -> Files.createDirectory(path);
                case PIPE ->
                    new ProcessBuilder("mkfifo", path.toString())
                            .start()
                            .onExit()
                            .join();
                case LINK_TO_NOTHING -> Files.createSymbolicLink(path, Path.of("nowhere"));
                case LINK_TO_ITSELF -> Files.createSymbolicLink(path, path.getFileName());
                case OTHER -> Files.createSymbolicLink(path, other);
                case MISSING -> assertThat(path).doesNotExist();
            }
        }
    }

    @Test
    void a_folder_in_place_of_a_file() throws IOException {
        for (Map.Entry<String, byte[]> file : whole.entrySet()) {
            Path path = here.resolve(file.getKey());
            Files.delete(path);
            Files.createDirectory(path);
            Cli.Result check = Cli.in(here).run("check");
            assertThat(check.err()).contains(file.getKey() + ": ").contains("this is a folder");
            BadCommandLinesTest.assertNoInsides(check);
            Files.delete(path);
            Files.write(path, file.getValue());
        }
    }

    /** Every damage with check; some with another command too, because all read the files in the same way. */
    private void tryAll(int seed, String what, String path, boolean harmless) throws IOException {
        Map<String, String> before = Folders.content(here);
        int check = run(what, "check");
        refused += check == ExitCode.NOT_RIGHT.code() ? 1 : 0;
        if (seed % 10 == 0) {
            int json = run(what, "check", "--json");
            expect(json == check, what, "check ends with %s, with --json %s".formatted(check, json));
        } else if (seed % 10 == 1) {
            boolean profile = path.startsWith("profiles/") && path.endsWith(".yaml");
            int other = profile ? run(what, "needs", id(path)) : run(what, "dishes");
            expect(check != 0 || other != ExitCode.NOT_RIGHT.code(), what, "check finds nothing, the command does");
        }
        if (harmless) {
            expect(check == 0, what, "refused although it says the same");
            boolean asBefore =
                    seed % 3 > 0 || Cli.in(here).run("dishes", "--json").out().equals(asItWas);
            expect(asBefore, what, "not read as before");
        }
        expect(Folders.content(here).equals(before), what, "a file was changed");
    }

    private static String id(String path) {
        return path.substring(path.lastIndexOf('/') + 1).replace(".yaml", "");
    }

    /** One command, which ends with its work done or with exit 2 and a place. */
    private int run(String what, String... command) {
        String which = what + ", " + String.join(" ", command);
        long start = System.nanoTime();
        Cli.Result result = Cli.in(here).run(command);
        Duration took = Duration.ofNanos(System.nanoTime() - start);
        expect(took.compareTo(MOST) < 0, which, "took " + took);
        expect(!INSIDES.matcher(result.both()).find(), which, "shows insides: " + result.err());
        expect(!CONTROL.matcher(result.err()).find(), which, "sends control characters to the terminal");
        if (result.code() == ExitCode.NOT_RIGHT.code()) {
            expect(
                    LINE_AND_COLUMN.matcher(result.err()).find()
                            || WHOLE_FILE.matcher(result.err()).find(),
                    which,
                    "names no place: " + result.err());
        } else {
            expect(result.code() == 0 || result.code() == ExitCode.NO_PLAN.code(), which, "ends with " + result.code());
            expect(!result.err().contains(": error: "), which, "ends well after an error: " + result.err());
        }
        return result.code();
    }

    private void expect(boolean right, String what, String otherwise) {
        if (!right) {
            failures.add(what + ": " + otherwise.lines().limit(4).reduce("", (a, b) -> a + b + "\n"));
        }
    }
}
