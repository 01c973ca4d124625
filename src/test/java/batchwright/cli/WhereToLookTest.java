package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Words that no message says any more would leave a command unsaid. */
class WhereToLookTest {
    @Test
    void messages_say_all_the_words_that_commands_go_with() throws IOException {
        var sources = new StringBuilder();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/batchwright"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                if (!file.toString().contains("cli")) {
                    sources.append(Files.readString(file));
                }
            }
        }
        String messages = sources.toString().replaceAll("\"\\s*\\+ \"", "");

        assertThat(WhereToLook.COMMANDS.keySet()).allMatch(messages::contains);
    }
}
