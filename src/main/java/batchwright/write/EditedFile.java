package batchwright.write;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * A file that the user edits, changed by a command because the user asked for just that. It is replaced whole, and only as long as
 * nobody else has changed it since it was looked at.
 */
public final class EditedFile {
    private final Path named;
    private final Path real;
    private final byte[] before;

    private EditedFile(Path named, Path real, byte[] before) {
        this.named = named;
        this.real = real;
        this.before = before;
    }

    /**
     * Looks at it; links are followed.
     *
     * @throws CannotWrite when it is no plain file that may be written
     */
    public static EditedFile of(Path named) throws CannotWrite {
        try {
            Path real = named.toRealPath();
            if (!Files.isRegularFile(real)) {
                throw new CannotWrite("\"" + named + "\" is no ordinary file", "Nothing was written.");
            }
            if (!Files.isWritable(real)) {
                throw new CannotWrite(
                        "\"" + named + "\" cannot be written: this is not allowed there",
                        "Nothing was written. Allow it to be written, or edit another copy.");
            }
            return new EditedFile(named, real, Files.readAllBytes(real));
        } catch (IOException why) {
            throw CannotWrite.because(named.toString(), why);
        }
    }

    /** As it was when it was looked at, every sign of it. */
    public String text() {
        return new String(before, StandardCharsets.UTF_8);
    }

    /**
     * Writes it, whole or not at all.
     *
     * @throws CannotWrite when that is not possible, or it was changed meanwhile; then it is as it was
     */
    public void replace(String text) throws CannotWrite {
        try {
            if (!Arrays.equals(Files.readAllBytes(real), before)) {
                throw new CannotWrite("\"" + named + "\" was changed meanwhile", "Nothing was written. Try again.");
            }
            WholeFile.replace(real, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException why) {
            throw CannotWrite.because(named.toString(), why);
        }
    }
}
