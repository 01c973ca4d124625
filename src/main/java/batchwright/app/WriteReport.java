package batchwright.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes a report; one of the same name is replaced, as it can be made again at any time. */
public final class WriteReport {
    private WriteReport() {}

    /** @throws Refused when it cannot be written */
    public static void to(Path file, String report) {
        if (Files.isDirectory(file)) {
            throw Refused.because("\"" + file + "\" is a folder", "Name a file, such as plan.html.");
        }
        try {
            Files.write(file, report.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw Refused.because(
                    "the report cannot be written to \"" + file + "\"",
                    "Name a file in a folder that is there and may be written to.");
        }
    }
}
