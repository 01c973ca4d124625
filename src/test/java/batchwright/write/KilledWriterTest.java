package batchwright.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Two processes that write one file over and over, killed at any moment: the file is that of the one or of the other, whole. */
@Timeout(300)
class KilledWriterTest {
    private static final int SIZE = 3_000_000;
    private static final int RUNS = 6;
    private static final int MOST_RUNS = 60;
    private static final int MOST_MILLIS = 150;

    @TempDir
    Path here;

    /** Writes a file full of one letter, again and again. */
    static final class Writer {
        private Writer() {}

        /** @param args the file, the letter */
        public static void main(String[] args) throws CannotWrite {
            var file =
                    new Output(Path.of(args[0]), text -> text.startsWith("mark"), new Guard(Optional.empty(), false));
            String text = "mark" + args[1].repeat(SIZE);
            while (true) {
                file.write(text);
            }
        }
    }

    private Process start(String letter) throws Exception {
        String classes = Path.of(Writer.class
                        .getProtectionDomain()
                        .getCodeSource()
                        .getLocation()
                        .toURI()) + ":"
                + Path.of(Output.class
                        .getProtectionDomain()
                        .getCodeSource()
                        .getLocation()
                        .toURI());
        return new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        classes,
                        Writer.class.getName(),
                        here.resolve("file.html").toString(),
                        letter))
                .inheritIO()
                .start();
    }

    @Test
    void the_file_is_always_whole() throws Exception {
        var random = new Random(20261130);
        for (int run = 0; run < RUNS || (run < MOST_RUNS && !killedWhileWriting()); run++) {
            Process a = start("a");
            Process b = start("b");
            while (!Files.exists(here.resolve("file.html")) && a.isAlive() && b.isAlive()) {
                Thread.sleep(1);
            }
            for (int look = 0; look < 3; look++) {
                Thread.sleep(random.nextInt(MOST_MILLIS));
                whole();
            }
            assertThat(a.isAlive() && b.isAlive()).isTrue();
            a.destroyForcibly();
            b.destroyForcibly();
            assertThat(a.waitFor(60, TimeUnit.SECONDS) && b.waitFor(60, TimeUnit.SECONDS))
                    .isTrue();
            whole();
        }
        // Some were killed while they wrote; else this would show little.
        assertThat(killedWhileWriting()).isTrue();
    }

    private boolean killedWhileWriting() throws Exception {
        try (var left = Files.newDirectoryStream(here, ".batchwright-*.tmp")) {
            return left.iterator().hasNext();
        }
    }

    private void whole() throws Exception {
        String text = Files.readString(here.resolve("file.html"), StandardCharsets.US_ASCII);
        assertThat(text).hasSize(SIZE + 4);
        assertThat(text.substring(4).chars().distinct().count()).isOne();
        assertThat(text).startsWith("mark");
    }
}
