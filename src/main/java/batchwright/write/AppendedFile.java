package batchwright.write;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A file to which whole lines are added and from which nothing is taken. While lines are added, no other program may add any; they
 * are on the disk when that is done. A last line without an end, which was cut off by a crash, gets a mark and an end first.
 */
public final class AppendedFile {
    /** Locks keep programs apart, not the threads of one. */
    private static final Object ONE_AT_A_TIME = new Object();
    /** Of a file that nobody wrote by hand [bytes]. */
    private static final long MOST_BYTES = 1 << 26;

    private final Path file;
    private final String head;
    private final String torn;

    /** Decides which lines are added, by what the file holds. */
    @FunctionalInterface
    public interface Decision {
        /** Lines without their ends; none when nothing is to be added. */
        List<String> lines(String text);
    }

    /**
     * @param head what a new file begins with
     * @param torn what is put behind a line that was cut off
     */
    public AppendedFile(Path file, String head, String torn) {
        this.file = file;
        this.head = head;
        this.torn = torn;
    }

    /**
     * Adds lines at the end. What the decision throws goes through, and nothing is added.
     *
     * @throws CannotWrite when that is not possible; then the file is as it was
     */
    public void append(Decision decision) throws CannotWrite {
        try {
            if (!Files.exists(file)) {
                makeOrFind();
            }
            if (!Files.isRegularFile(file)) {
                throw new CannotWrite("\"" + file + "\" is no ordinary file", "Nothing was written.");
            }
            locked(channel -> add(channel, decision));
        } catch (IOException why) {
            throw CannotWrite.because(file.toString(), why);
        }
    }

    /**
     * Takes lines out for good, or a part of them: the file is replaced by one without them, while no other program adds any.
     *
     * @param left what is left of a line; empty when nothing is
     * @return how many lines are not as they were
     * @throws CannotWrite when that is not possible; then the file is as it was
     */
    public int takeOut(Function<String, Optional<String>> left) throws CannotWrite {
        if (!Files.exists(file)) {
            return 0;
        }
        int[] taken = new int[1];
        try {
            locked(channel -> {
                String text = read(channel);
                List<String> lines = text.lines().toList();
                List<Optional<String>> all = lines.stream().map(left).toList();
                List<String> kept = all.stream().flatMap(Optional::stream).toList();
                taken[0] = (int) IntStream.range(0, lines.size())
                        .filter(i -> all.get(i).filter(lines.get(i)::equals).isEmpty())
                        .count();
                if (taken[0] > 0) {
                    String content = String.join("\n", kept) + (kept.isEmpty() ? "" : "\n");
                    WholeFile.replace(file.toRealPath(), content.getBytes(StandardCharsets.UTF_8));
                }
            });
        } catch (IOException why) {
            throw CannotWrite.because(file.toString(), why);
        }
        return taken[0];
    }

    @FunctionalInterface
    private interface Work {
        void on(FileChannel channel) throws IOException;
    }

    /** While one waits for the lock, another may have put a new file in the place of this one: then it looks again. */
    private void locked(Work work) throws IOException {
        synchronized (ONE_AT_A_TIME) {
            boolean done = false;
            while (!done) {
                Object before = key();
                try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE);
                        var lock = channel.lock()) {
                    if (lock.isValid() && Objects.equals(before, key())) {
                        work.on(channel);
                        done = true;
                    }
                }
            }
        }
    }

    /** By which the system tells files apart; null where it does not. */
    private @Nullable Object key() throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class).fileKey();
    }

    /** Another program may make it at the same time. */
    private void makeOrFind() throws CannotWrite {
        try {
            new NewFile(file).write(head);
        } catch (CannotWrite cannot) {
            if (!Files.exists(file)) {
                throw cannot;
            }
        }
    }

    private void add(FileChannel channel, Decision decision) throws IOException {
        String text = read(channel);
        List<String> lines = decision.lines(text);
        if (lines.isEmpty()) {
            return;
        }
        long size = channel.size();
        String before = text.isEmpty() || text.endsWith("\n") ? "" : " " + torn + "\n";
        try {
            write(channel, size, before + String.join("\n", lines) + "\n");
            channel.force(true);
        } catch (IOException why) {
            shorten(channel, size);
            throw why;
        }
    }

    private static String read(FileChannel channel) throws IOException {
        if (channel.size() > MOST_BYTES) {
            throw new IOException("it is too large");
        }
        ByteBuffer bytes = ByteBuffer.allocate((int) channel.size());
        while (bytes.hasRemaining() && channel.read(bytes, bytes.position()) >= 0) {
            // Until all is there.
        }
        return new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8);
    }

    private static void write(FileChannel channel, long at, String text) throws IOException {
        ByteBuffer rest = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
        long next = at;
        while (rest.hasRemaining()) {
            next += channel.write(rest, next);
        }
    }

    /** Takes half a line away again. Where that fails too, the next line that is added marks it. */
    private static void shorten(FileChannel channel, long size) {
        try {
            channel.truncate(size);
        } catch (IOException stays) {
            // It is marked later.
        }
    }
}
