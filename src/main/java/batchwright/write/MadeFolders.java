package batchwright.write;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;

/** The folders that had to be made for something; they go again, when still empty, unless it is said to keep them. */
final class MadeFolders implements AutoCloseable {
    private final Deque<Path> made = new ArrayDeque<>();

    /** Makes a folder and those above it, where they are not there. */
    MadeFolders(Path folder) throws IOException {
        var missing = new ArrayDeque<Path>();
        @Nullable Path next = folder.toAbsolutePath();
        while (next != null && !Files.isDirectory(next)) {
            missing.push(next);
            next = next.getParent();
        }
        try {
            for (Path each : missing) {
                make(each);
            }
        } catch (IOException why) {
            close();
            throw why;
        }
    }

    private void make(Path folder) throws IOException {
        try {
            Files.createDirectory(folder);
            made.push(folder);
        } catch (FileAlreadyExistsException sinceThen) {
            if (!Files.isDirectory(folder)) {
                throw sinceThen;
            }
        }
    }

    void keep() {
        made.clear();
    }

    @Override
    public void close() {
        for (Path folder : made) {
            try {
                Files.deleteIfExists(folder);
            } catch (IOException stays) {
                return;
            }
        }
    }
}
