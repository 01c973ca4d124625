package batchwright.cli;

import java.io.IOException;
import java.util.concurrent.TimeUnit;

/** Whether what is written to standard error appears on a terminal. */
final class Screen {
    private static final int MOST_SECONDS = 1;

    private Screen() {}

    /**
     * Java 17 only knows of a terminal when input and output are both one; a plan that goes into a file is worth a progress line,
     * too. So a shell is asked, which takes some milliseconds; where there is none, nothing is known, so no.
     */
    static boolean isTerminal() {
        if ("dumb".equals(System.getenv("TERM"))) {
            return false;
        }
        try {
            Process test = new ProcessBuilder("sh", "-c", "test -t 2")
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            return test.waitFor(MOST_SECONDS, TimeUnit.SECONDS) && test.exitValue() == 0;
        } catch (IOException noShell) {
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
