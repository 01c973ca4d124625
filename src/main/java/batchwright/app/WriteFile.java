package batchwright.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes what a plan is told in beside its answer; a file of the same name is replaced, as it can be made again at any time. */
public final class WriteFile {
    private WriteFile() {}

    /**
     * Finds out before the work what would come to light only after it.
     *
     * @throws Refused when it certainly cannot be written
     */
    public static void check(Path file) {
        if (Files.isDirectory(file)) {
            throw Refused.because("\"" + file + "\" is a folder", "Name a file in it.");
        }
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw cannotBeWritten(file);
        }
    }

    /** @throws Refused when it cannot be written */
    public static void to(Path file, String text) {
        check(file);
        try {
            Files.write(file, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw cannotBeWritten(file);
        }
    }

    private static Refused cannotBeWritten(Path file) {
        return Refused.because(
                "\"" + file + "\" cannot be written", "Name a file in a folder that is there and may be written to.");
    }
}
