package batchwright.app;

import java.time.Duration;

/** When an answer is due; reading the files counts, too. */
final class Deadline {
    /** Whatever came before, the search gets this long. */
    private static final Duration LEAST = Duration.ofMillis(250);

    private final long end;

    private Deadline(long end) {
        this.end = end;
    }

    /** From now on. */
    static Deadline in(Duration patience) {
        return new Deadline(System.nanoTime() + patience.toNanos());
    }

    /** What is left of the time, or a little. */
    Duration left() {
        Duration left = Duration.ofNanos(end - System.nanoTime());
        return left.compareTo(LEAST) < 0 ? LEAST : left;
    }
}
