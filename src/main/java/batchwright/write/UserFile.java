package batchwright.write;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** A file of the user's that is taken away because they asked for just that. */
public final class UserFile {
    private UserFile() {}

    /**
     * A link goes, not what it leads to.
     *
     * @return whether it was there
     * @throws CannotWrite when it is no file, or stays
     */
    public static boolean takeAway(Path file) throws CannotWrite {
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        if (Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new CannotWrite("\"" + file + "\" is a folder", "Nothing was taken away.");
        }
        try {
            Files.delete(file);
            return true;
        } catch (IOException why) {
            throw CannotWrite.because(file.toString(), why);
        }
    }
}
