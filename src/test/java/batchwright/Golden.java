package batchwright;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Text that was read and approved by a person. With {@code -Dgolden.rewrite=true} it is written anew, to be read again. */
public final class Golden {
    private static final boolean REWRITE = Boolean.getBoolean("golden.rewrite");

    private Golden() {}

    public static void check(Path approved, String actual) {
        try {
            if (REWRITE) {
                Files.createDirectories(approved.toAbsolutePath().getParent());
                Files.writeString(approved, actual, UTF_8);
            }
            assertThat(approved).isRegularFile();
            assertThat(actual).isEqualTo(Files.readString(approved, UTF_8));
        } catch (IOException e) {
            throw new AssertionError("The approved text " + approved + " cannot be read or written.", e);
        }
    }
}
