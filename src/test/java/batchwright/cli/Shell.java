package batchwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The program as a process of its own, in a script in which it is called {@code bw}. */
final class Shell {
    private static final String RUN =
            "\"$JAVA\" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:-UsePerfData -cp \"$CLASSES\" batchwright.cli.Main ";
    private static final String PROGRAM = """
            set -u -o pipefail
            bw() { RUN "$@"; }
            plan() { bw plan parent-holding --date 2026-11-25 --cook lentil_ragu "$@"; }
            """.replace("RUN", RUN);

    private Shell() {}

    /** @param err what the script wrote to standard error */
    record Ended(int code, String out, String err) {}

    /** Runs a script to its end. What it writes goes through pipes, so that a limit on files does not touch it. */
    static Ended run(Path here, String script) throws IOException, InterruptedException {
        Process process = builder(here, script).start();
        CompletableFuture<String> err = CompletableFuture.supplyAsync(() -> all(process.getErrorStream()));
        String out = all(process.getInputStream());
        return new Ended(process.waitFor(), out, err.join());
    }

    private static String all(InputStream stream) {
        try {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One command; the process is the program itself, not a shell. */
    static Process start(Path here, Path out, Path err, String command) throws IOException {
        return builder(here, "exec " + RUN + command)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
    }

    private static ProcessBuilder builder(Path here, String script) {
        var builder = new ProcessBuilder(List.of("bash", "-c", PROGRAM + script)).directory(here.toFile());
        builder.environment()
                .put(
                        "JAVA",
                        Path.of(System.getProperty("java.home"), "bin", "java").toString());
        builder.environment().put("CLASSES", classes());
        return builder;
    }

    /** Those of this test; some launchers of tests load them by a loader of their own. */
    private static String classes() {
        return Shell.class.getClassLoader() instanceof URLClassLoader loader
                ? Stream.of(loader.getURLs())
                        .map(url -> Path.of(URI.create(url.toString())).toString())
                        .collect(Collectors.joining(":"))
                : System.getProperty("java.class.path");
    }
}
