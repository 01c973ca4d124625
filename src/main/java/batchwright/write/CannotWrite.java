package batchwright.write;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import org.jspecify.annotations.Nullable;

/** Something that cannot be written, or must not be. What was there before is there still. */
public final class CannotWrite extends Exception {
    private static final long serialVersionUID = 1L;

    private final String wrong;
    private final String cure;

    CannotWrite(String wrong, String cure) {
        super(wrong);
        this.wrong = wrong;
        this.cure = cure;
    }

    /** @param what a name as the user gave it */
    static CannotWrite because(String what, IOException why) {
        return new CannotWrite(
                "\"" + what + "\" cannot be written" + reason(why),
                "Name a place that is there, may be written to and has room.");
    }

    private static String reason(IOException why) {
        if (why instanceof AccessDeniedException) {
            return ": this is not allowed there";
        }
        @Nullable String says = why instanceof FileSystemException known ? known.getReason() : why.getMessage();
        return says == null || says.isBlank() ? "" : ": " + says;
    }

    /** What is wrong, one sentence without a full stop. */
    public String wrong() {
        return wrong;
    }

    /** What to do about it. */
    public String cure() {
        return cure;
    }
}
