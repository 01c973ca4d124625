package batchwright.write;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * A file that the program keeps for itself beside the user's, writes again and again, and takes away in the end. It is known by its
 * first line; what does not begin so is somebody else's and stays as it is.
 */
public final class OwnFile {
    private final Path file;
    private final String mark;

    /** @param mark the first line of it, with its line end */
    public OwnFile(Path file, String mark) {
        this.file = file;
        this.mark = mark;
    }

    /** Whether it is there. */
    public boolean isThere() {
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && isOurs();
    }

    /**
     * Writes it, whole or not at all, after its first line.
     *
     * @throws CannotWrite when that is not possible, or another file has its name
     */
    public void write(String text) throws CannotWrite {
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            new NewFile(file).write(mark + text);
        } else if (isThere()) {
            replace((mark + text).getBytes(StandardCharsets.UTF_8));
        } else {
            throw new CannotWrite(file + " is there already, and not made by this program", "Move it away first.");
        }
    }

    private void replace(byte[] content) throws CannotWrite {
        try {
            WholeFile.replace(file, content);
        } catch (IOException why) {
            throw CannotWrite.because(file.toString(), why);
        }
    }

    /**
     * Takes it away, if it is there.
     *
     * @throws CannotWrite when it stays
     */
    public void remove() throws CannotWrite {
        try {
            if (isThere()) {
                Files.delete(file);
            }
        } catch (IOException why) {
            throw CannotWrite.because(file.toString(), why);
        }
    }

    private boolean isOurs() {
        try (var in = Files.newInputStream(file)) {
            byte[] first = mark.getBytes(StandardCharsets.UTF_8);
            return Arrays.equals(in.readNBytes(first.length), first);
        } catch (IOException unreadable) {
            return false;
        }
    }
}
