package batchwright.files;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import batchwright.text.Problem;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;

/** However a file is damaged, reading it ends soon, with problems or with a value, and never with an exception. */
class CorruptionTest {
    private static final int CASES = 300;
    private static final Duration MOST = Duration.ofSeconds(2);

    @Test
    void damaged_starter_files_are_read_or_refused() {
        FilesInMemory whole = FilesInMemory.starter();
        int refused = 0;
        for (int seed = 0; seed < CASES; seed++) {
            RandomGenerator random =
                    RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
            String path = whole.paths().get(random.nextInt(whole.paths().size()));
            FilesInMemory damaged = FilesInMemory.starter().with(path, damage(whole.bytes(path), random));
            var found = new ArrayList<Problem>();
            long start = System.nanoTime();
            assertThatCode(() -> found.addAll(damaged.problems()))
                    .as("seed %d, %s", seed, path)
                    .doesNotThrowAnyException();
            assertThat(Duration.ofNanos(System.nanoTime() - start))
                    .as("seed %d, %s", seed, path)
                    .isLessThan(MOST);
            assertThat(found)
                    .allSatisfy(problem -> assertThat(problem.render())
                            .startsWith(problem.at().file().path()));
            refused += found.isEmpty() ? 0 : 1;
        }
        assertThat(refused).as("most damage is noticed").isGreaterThan(CASES / 3);
    }

    private static byte[] damage(byte[] bytes, RandomGenerator random) {
        return switch (random.nextInt(7)) {
            case 0 -> flipped(bytes, 1, random);
            case 1 -> flipped(bytes, 40, random);
            case 2 -> without(bytes, random);
            case 3 -> with(bytes, "\"", random);
            case 4 ->
                with(
                        bytes,
                        List.of("\t", ",", ":", "[", "{", "&x ", "*x ", "- ", "#", "'", "|", "\r")
                                .get(random.nextInt(12)),
                        random);
            case 5 -> shuffledLines(bytes, random);
            default -> java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length));
        };
    }

    private static byte[] flipped(byte[] bytes, int times, RandomGenerator random) {
        for (int i = 0; i < times; i++) {
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return bytes;
    }

    private static byte[] without(byte[] bytes, RandomGenerator random) {
        String text = new String(bytes, ISO_8859_1);
        int from = random.nextInt(text.length());
        int to = Math.min(text.length(), from + 1 + random.nextInt(200));
        return (text.substring(0, from) + text.substring(to)).getBytes(ISO_8859_1);
    }

    private static byte[] with(byte[] bytes, String inserted, RandomGenerator random) {
        String text = new String(bytes, ISO_8859_1);
        int at = random.nextInt(text.length());
        return (text.substring(0, at) + inserted + text.substring(at)).getBytes(ISO_8859_1);
    }

    private static byte[] shuffledLines(byte[] bytes, RandomGenerator random) {
        var lines = new ArrayList<>(new String(bytes, ISO_8859_1).lines().toList());
        java.util.Collections.swap(lines, random.nextInt(lines.size()), random.nextInt(lines.size()));
        lines.remove(random.nextInt(lines.size()));
        return String.join("\n", lines).getBytes(ISO_8859_1);
    }
}
