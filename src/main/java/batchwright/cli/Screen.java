package batchwright.cli;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * What is known of the terminal. Java 17 only knows of one when input and output are both one; a plan that goes into a file is worth a
 * progress line, too. So a shell is asked, which takes some milliseconds; where there is none, nothing is known, so no.
 */
final class Screen {
    private static final int MOST_SECONDS = 1;
    private static final String COLUMNS = "[1-9]\\d{0,3}";

    private Screen() {}

    /** Whether what is written to standard error appears on a terminal that can rewrite a line. */
    static boolean isTerminal() {
        return !"dumb".equals(System.getenv("TERM"))
                && passed(shell("test -t 2").redirectError(Redirect.INHERIT)).isPresent();
    }

    /**
     * Whether answers appear on a terminal whose locale has fewer letters than Unicode: names of files would come out as rubbish.
     * In a pipe the same files give the same bytes whatever the locale.
     */
    static boolean isAsciiOnly() {
        return !System.getProperty("native.encoding", "UTF-8").startsWith("UTF")
                && passed(shell("test -t 1").redirectOutput(Redirect.INHERIT)).isPresent();
    }

    /** How wide the terminal is on which answers appear; empty in a pipe or a file. */
    static OptionalInt columns() {
        // Standard output is the terminal that is asked, so its size comes over the other way.
        return passed(shell("test -t 1 && stty size <&1 >&2").redirectOutput(Redirect.INHERIT))
                .map(size -> columns(System.getenv("COLUMNS"), size.replaceFirst(".* ", "")))
                .orElse(OptionalInt.empty());
    }

    /** What the environment says goes before what the terminal says. */
    static OptionalInt columns(@Nullable String environment, String terminal) {
        if (environment != null && environment.matches(COLUMNS)) {
            return OptionalInt.of(Integer.parseInt(environment));
        }
        return terminal.matches(COLUMNS) ? OptionalInt.of(Integer.parseInt(terminal)) : OptionalInt.empty();
    }

    /** Whether answers go to another program. */
    static boolean isPipe() {
        return passed(shell("test -p /dev/stdout || test -S /dev/stdout").redirectOutput(Redirect.INHERIT))
                .isPresent();
    }

    private static ProcessBuilder shell(String test) {
        return new ProcessBuilder("sh", "-c", test);
    }

    /** What the test wrote to standard error, if that is ours to read; empty when it did not pass. */
    private static Optional<String> passed(ProcessBuilder test) {
        try {
            Process running = test.start();
            return running.waitFor(MOST_SECONDS, TimeUnit.SECONDS) && running.exitValue() == 0
                    ? Optional.of(
                            new String(running.getErrorStream().readAllBytes(), StandardCharsets.US_ASCII).strip())
                    : Optional.empty();
        } catch (IOException noShell) {
            return Optional.empty();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }
}
