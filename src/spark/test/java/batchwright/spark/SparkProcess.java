package batchwright.spark;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.spark.launcher.JavaModuleOptions;

/** A Java process of its own on this machine: a master, a worker, a job, or the program. What it says is kept. */
final class SparkProcess implements AutoCloseable {
    static final Path PROGRAM = Path.of(System.getProperty("batchwright.jar")).toAbsolutePath().normalize();
    private static final Path MADE = Path.of(System.getProperty("batchwright.spark")).toAbsolutePath();
    private static final int LONGEST_SECONDS = 240;

    private final Process process;
    private final Queue<String> said = new ConcurrentLinkedQueue<>();

    private SparkProcess(Path here, List<String> arguments) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(arguments);
        var builder = new ProcessBuilder(command).directory(here.toFile()).redirectErrorStream(true);
        builder.environment().put("SPARK_HOME", MADE.resolve("home").toString());
        builder.environment().put("SPARK_LOCAL_IP", "127.0.0.1");
        builder.environment().put("SPARK_SCALA_VERSION", "2.13");
        process = builder.start();
        var reader = new Thread(this::read, "what a process says");
        reader.setDaemon(true);
        reader.start();
    }

    /** A class of Spark. */
    static SparkProcess spark(Path here, String main, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(JavaModuleOptions.defaultModuleOptionArray()));
        command.addAll(List.of("-Xmx700m", "-cp", MADE.resolve("home/jars") + "/*", "org.apache.spark.deploy." + main));
        command.addAll(List.of(arguments));
        return new SparkProcess(here, command);
    }

    /** The job, as {@code spark-submit} starts it. */
    static SparkProcess job(Path here, String master, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of("--master", master, "--conf", "spark.ui.enabled=false"));
        command.addAll(List.of("--conf", "spark.driver.host=127.0.0.1", "--executor-memory", "600m"));
        command.addAll(List.of("--class", "batchwright.spark.RosterJob", "--jars", PROGRAM.toString()));
        command.add(MADE.resolve("batchwright-spark.jar").toString());
        command.addAll(List.of(arguments));
        return spark(here, "SparkSubmit", command.toArray(new String[0]));
    }

    /** The program by itself. */
    static SparkProcess program(Path here, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of("-jar", PROGRAM.toString()));
        command.addAll(List.of(arguments));
        return new SparkProcess(here, command);
    }

    private void read() {
        try (BufferedReader lines = process.inputReader()) {
            lines.lines().forEach(said::add);
        } catch (IOException | java.io.UncheckedIOException ended) {
            said.add("(no more is heard)");
        }
    }

    /** Waits until it said something. */
    Matcher until(Pattern what) throws InterruptedException {
        waitFor(() -> said.stream().anyMatch(line -> what.matcher(line).find()), "to say " + what);
        return said.stream().map(what::matcher).filter(Matcher::find).findFirst().orElseThrow();
    }

    /** Waits until it said so often. */
    void untilSaid(int times, String what) throws InterruptedException {
        waitFor(() -> count(what) >= times, "to say " + what);
    }

    long count(String what) {
        return said.stream().filter(line -> line.contains(what)).count();
    }

    /** Waits for its end. */
    int code() throws InterruptedException {
        if (!process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)) {
            throw new AssertionError("does not end; it said\n" + says());
        }
        return process.exitValue();
    }

    String says() {
        return String.join("\n", said);
    }

    private void waitFor(BooleanSupplier condition, String what) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(LONGEST_SECONDS);
        while (!condition.getAsBoolean()) {
            if (!process.isAlive() || System.nanoTime() > end) {
                throw new AssertionError("was to " + what + "; it said\n" + says());
            }
            Thread.sleep(20);
        }
    }

    /** As when the power fails: without a word, and whatever it started, too. */
    void kill() {
        List<ProcessHandle> started = process.descendants().toList();
        process.destroyForcibly();
        started.forEach(ProcessHandle::destroyForcibly);
    }

    @Override
    public void close() {
        kill();
    }
}
