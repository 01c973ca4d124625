package batchwright.files.disk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;

/**
 * One file or folder on the disk, looked at and read. It asks for attributes and looks at what the system answers: {@code Files.exists}
 * and its like say no as well when they may not look. Only plain files are opened, so that nothing hangs on a pipe.
 *
 * @param shown the path as the user knows it
 */
record OnDisk(Path path, String shown) {
    static final int MOST_ENTRIES = 10_000;
    /** In bytes on Linux, in letters elsewhere; no usual system has more. */
    private static final int LONGEST_NAME = 255;

    private static final int LONGEST_PATH = 4095;

    /** Links are followed. */
    Found<BasicFileAttributes> attributes() {
        try {
            return new Found.There<>(Files.readAttributes(path, BasicFileAttributes.class));
        } catch (NoSuchFileException missing) {
            return isLink() ? Obstacle.LINK_TO_NOTHING.at(shown) : new Found.Absent<>();
        } catch (AccessDeniedException denied) {
            return Obstacle.DENIED.at(shown);
        } catch (IOException other) {
            return isTooLong() ? new Found.Absent<>() : odd().at(shown);
        }
    }

    /** The bytes of a plain file that is not too large. */
    Found<byte[]> bytes() {
        return attributes().then(this::bytes);
    }

    private Found<byte[]> bytes(BasicFileAttributes attributes) {
        if (!attributes.isRegularFile()) {
            return (attributes.isDirectory() ? Obstacle.IS_FOLDER : Obstacle.IS_NO_FILE).at(shown);
        }
        if (attributes.size() > Decoder.MOST_BYTES) {
            return Obstacle.TOO_LARGE.at(shown);
        }
        try (InputStream in = Files.newInputStream(path)) {
            // One byte more than is taken: the file may be larger than it said.
            byte[] bytes = in.readNBytes(Decoder.MOST_BYTES + 1);
            return bytes.length > Decoder.MOST_BYTES ? Obstacle.TOO_LARGE.at(shown) : new Found.There<>(bytes);
        } catch (AccessDeniedException denied) {
            return Obstacle.DENIED.at(shown);
        } catch (NoSuchFileException gone) {
            return new Found.Absent<>();
        } catch (IOException fault) {
            return Obstacle.BROKEN.at(shown);
        }
    }

    /** What is in a folder, in no order. */
    Found<List<Path>> entries() {
        return attributes().then(attributes -> attributes.isDirectory() ? listed() : Obstacle.IS_FILE.at(shown));
    }

    private Found<List<Path>> listed() {
        var entries = new ArrayList<Path>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(path)) {
            for (Path entry : all) {
                if (entries.size() == MOST_ENTRIES) {
                    return Obstacle.TOO_MANY.at(shown);
                }
                entries.add(entry);
            }
            // A folder that may be listed and not entered would look like one of unknown things.
            if (!entries.isEmpty()) {
                Files.readAttributes(entries.get(0), BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            }
            return new Found.There<>(entries);
        } catch (AccessDeniedException denied) {
            return Obstacle.FOLDER_DENIED.at(shown);
        } catch (NoSuchFileException gone) {
            return new Found.There<>(entries);
        } catch (IOException | DirectoryIteratorException fault) {
            return Obstacle.BROKEN.at(shown);
        }
    }

    private boolean isLink() {
        return Files.isSymbolicLink(path);
    }

    /** Longer than any name of a file can be, so that there is none. */
    private boolean isTooLong() {
        for (Path name : path) {
            if (name.toString().length() > LONGEST_NAME) {
                return true;
            }
        }
        return path.toString().length() > LONGEST_PATH;
    }

    /** What the system has no exception of its own for. */
    private Obstacle odd() {
        if (isLink()) {
            return Obstacle.LINK_IN_CIRCLE;
        }
        for (Path above = path.getParent(); above != null; above = above.getParent()) {
            if (Files.isRegularFile(above)) {
                return Obstacle.INSIDE_FILE;
            }
        }
        return Obstacle.BROKEN;
    }
}
