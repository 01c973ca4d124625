package batchwright.write;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.UUID;

/**
 * Writes a file so that at any moment, also when the power fails, its name stands for the old content or for the new one, each
 * whole: to a file beside it, which is forced to the disk and then takes its name in one step.
 */
final class WholeFile {
    private static final String HIDDEN = ".batchwright-";
    private static final String ENDING = ".tmp";
    /** Where less than this is free [bytes], a disk counts as full. */
    private static final int ROOM = 1 << 15;

    private WholeFile() {}

    /**
     * Makes a file that is not there.
     *
     * @throws FileAlreadyExistsException when there is one by now
     */
    static void create(Path file, byte[] content) throws IOException {
        Path beside = beside(file);
        try {
            fill(beside, content);
            giveName(beside, file);
        } finally {
            discard(beside);
        }
        force(folderOf(file));
    }

    /** A second name for a file is given only where there is none, in one step; not all file systems have them. */
    private static void giveName(Path beside, Path file) throws IOException {
        try {
            Files.createLink(file, beside);
        } catch (FileAlreadyExistsException taken) {
            throw taken;
        } catch (IOException | UnsupportedOperationException noLinks) {
            Files.move(beside, file);
        }
    }

    /** Puts a file in the place of the one that is there, with the same permissions. */
    static void replace(Path file, byte[] content) throws IOException {
        Path beside = beside(file);
        try {
            fill(beside, content);
            copyPermissions(file, beside);
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            discard(beside);
        }
        force(folderOf(file));
    }

    /** Finds out whether a file can be made in a folder and how much it may hold at least; leaves nothing behind. */
    static void tryOut(Path folder) throws IOException {
        Path beside = unused(folder);
        try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            write(channel, new byte[ROOM]);
        } finally {
            discard(beside);
        }
    }

    /** A name in a folder that nobody uses. */
    static Path unused(Path folder) {
        return folder.resolve(HIDDEN + UUID.randomUUID() + ENDING);
    }

    /** A new file, on the disk when this returns. */
    static void fill(Path file, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            write(channel, content);
            channel.force(true);
        }
    }

    private static void write(FileChannel channel, byte[] content) throws IOException {
        ByteBuffer rest = ByteBuffer.wrap(content);
        while (rest.hasRemaining()) {
            channel.write(rest);
        }
    }

    /** The names in a folder, as far as the system can do that. */
    static void force(Path folder) {
        try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
            names.force(true);
        } catch (IOException | UnsupportedOperationException notOffered) {
            // Then the names reach the disk when the system sees fit; each still stands for a whole file.
        }
    }

    private static void copyPermissions(Path from, Path to) {
        try {
            var old = Files.getFileAttributeView(from, PosixFileAttributeView.class);
            var made = Files.getFileAttributeView(to, PosixFileAttributeView.class);
            if (old != null && made != null) {
                made.setPermissions(old.readAttributes().permissions());
            }
        } catch (IOException notAllowed) {
            // The new file then has those that any new file has.
        }
    }

    private static void discard(Path beside) {
        try {
            Files.deleteIfExists(beside);
        } catch (IOException stays) {
            // What is left has a name that nobody else uses, and is in nobody's way.
        }
    }

    private static Path beside(Path file) {
        return unused(folderOf(file));
    }

    private static Path folderOf(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null) {
            throw new IllegalArgumentException("file (" + file + ") must be in a folder.");
        }
        return folder;
    }
}
