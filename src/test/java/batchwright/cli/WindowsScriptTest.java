package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The start script for Windows, read beside that for Linux and macOS: there is no Windows here to run it on. */
class WindowsScriptTest {
    private static final Path WINDOWS = Path.of("src/dist/batchwright.cmd");
    private static final Path OTHERS = Path.of("src/dist/batchwright");
    private static final Pattern FLAG = Pattern.compile("-(?:D|XX:[+-]|X(?:ms|mn|mx))[\\w.=]+");
    private static final List<String> COMMANDS = List.of("@echo", "rem", "setlocal", "set", "if", "exit", "\"%java%\"");

    private static List<String> lines() throws IOException {
        return Files.readString(WINDOWS).lines().filter(line -> !line.isBlank()).toList();
    }

    private static List<String> flags(Stream<String> lines) {
        return lines.flatMap(line -> FLAG.matcher(line).results())
                .map(found -> found.group())
                .filter(flag -> !flag.contains("DumpLoaded"))
                .distinct()
                .sorted()
                .toList();
    }

    @Test
    void its_lines_end_as_windows_wants_them() throws IOException {
        assertThat(Files.readString(WINDOWS).replace("\r\n", "")).doesNotContain("\n", "\r");
    }

    @Test
    void each_line_begins_with_a_command_of_its_shell() throws IOException {
        assertThat(lines()).allSatisfy(line -> assertThat(COMMANDS).contains(line.replaceFirst(" .*", "")));
    }

    @Test
    void quotes_are_closed_and_hold_every_path() throws IOException {
        assertThat(lines()).allSatisfy(line -> {
            assertThat(line.chars().filter(c -> c == '"').count() % 2).as(line).isZero();
            assertThat(line.replaceAll("\"[^\"]*\"", "")).doesNotContain("%here", "%kept", "%share", "\\");
        });
    }

    @Test
    void there_is_nothing_of_another_shell() throws IOException {
        assertThat(lines().stream().filter(line -> !line.startsWith("rem")))
                .noneMatch(line -> line.contains("$") || line.contains("/dev/null") || line.contains("'"));
    }

    @Test
    void it_starts_the_same_jar_with_the_same_flags() throws IOException {
        String start = lines().get(lines().size() - 1);

        assertThat(start).contains("-jar \"%here%\\lib\\batchwright.jar\" %*");
        assertThat(Files.readString(OTHERS)).contains("$home/lib/batchwright.jar");
        assertThat(flags(Stream.of(start)))
                .isEqualTo(flags(Files.readAllLines(OTHERS).stream().filter(line -> line.startsWith("set --"))));
    }
}
