package batchwright.write;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** A file that never takes the place of another, and whose folder is made where there is none. */
public final class NewFile {
    private final Path file;
    private final Path folder;

    /** @param file in some folder */
    public NewFile(Path file) {
        this.file = file;
        Path parent = file.toAbsolutePath().getParent();
        if (parent == null) {
            throw new IllegalArgumentException("file (" + file + ") must be in a folder.");
        }
        this.folder = parent;
    }

    /**
     * Finds out before the work what would come to light only after it. Leaves nothing behind.
     *
     * @throws CannotWrite when there is such a file, or none can be made
     */
    public void tryOut() throws CannotWrite {
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw isThere();
        }
        try {
            var made = new MadeFolders(folder);
            try {
                WholeFile.tryOut(folder);
            } finally {
                made.close();
            }
        } catch (IOException why) {
            throw CannotWrite.because(file.toString(), why);
        }
    }

    /**
     * Writes it, whole or not at all.
     *
     * @throws CannotWrite when there is such a file by now, or none can be made
     */
    public void write(String text) throws CannotWrite {
        try (var made = new MadeFolders(folder)) {
            WholeFile.create(file, text.getBytes(StandardCharsets.UTF_8));
            made.keep();
        } catch (FileAlreadyExistsException sinceThen) {
            throw isThere();
        } catch (IOException why) {
            throw CannotWrite.because(file.toString(), why);
        }
    }

    private CannotWrite isThere() {
        return new CannotWrite(file + " is there already", "Nothing was written. Give another name.");
    }
}
