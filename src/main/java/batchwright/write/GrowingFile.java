package batchwright.write;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * A file of whole lines that grows while a long command runs, and can be gone on with later. Each piece is handed to the system at once, so
 * that a killed program loses nothing that was added; it is on the disk once so much has come, and at the end.
 */
public final class GrowingFile implements Closeable {
    /** As much as a lost current may cost [bytes]. */
    private static final long UNFORCED = 1 << 22;

    private static final byte END = '\n';

    private final Path file;
    private final FileChannel channel;
    private long unforced;

    private GrowingFile(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * Opens it at its end; of a last line that was cut off nothing stays.
     *
     * @param anew whether what it holds goes first
     * @throws CannotWrite when that is not possible, or another program adds to it
     */
    public static GrowingFile open(Path file, boolean anew) throws CannotWrite {
        try {
            FileChannel channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            if (channel.tryLock() == null) {
                channel.close();
                throw new CannotWrite(
                        "another program writes to \"" + file + "\"", "Wait for it, or name another file.");
            }
            channel.truncate(anew ? 0 : wholeLines(channel));
            channel.position(channel.size());
            return new GrowingFile(file, channel);
        } catch (IOException why) {
            throw CannotWrite.because(file.toString(), why);
        }
    }

    /** Up to the end of the last line that has one [bytes]. */
    private static long wholeLines(FileChannel channel) throws IOException {
        ByteBuffer octet = ByteBuffer.allocate(1);
        for (long at = channel.size(); at > 0; at--) {
            octet.clear();
            channel.read(octet, at - 1);
            if (octet.get(0) == END) {
                return at;
            }
        }
        return 0;
    }

    /** @throws CannotWrite when it cannot be added whole */
    public void add(String lines) throws CannotWrite {
        ByteBuffer rest = ByteBuffer.wrap(lines.getBytes(StandardCharsets.UTF_8));
        try {
            unforced += rest.remaining();
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            if (unforced > UNFORCED) {
                force();
            }
        } catch (IOException why) {
            throw CannotWrite.because(file.toString(), why);
        }
    }

    private void force() throws IOException {
        channel.force(false);
        unforced = 0;
    }

    @Override
    public void close() throws IOException {
        try (channel) {
            force();
        }
    }
}
