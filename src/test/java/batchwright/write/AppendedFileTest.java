package batchwright.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Lines are added whole, by one program at a time, and nothing that was there is lost. */
@Timeout(120)
class AppendedFileTest {
    private static final String HEAD = "# head\n";

    @TempDir
    Path here;

    private AppendedFile file() {
        return new AppendedFile(here.resolve("book.txt"), HEAD, "# torn");
    }

    private String text() throws IOException {
        return Files.readString(here.resolve("book.txt"));
    }

    @Test
    void a_new_file_has_a_head_and_then_grows() throws Exception {
        file().append(text -> List.of("one", "two"));
        file().append(text -> List.of("three, after " + text.lines().count()));

        assertThat(text()).isEqualTo(HEAD + "one\ntwo\nthree, after 3\n");
    }

    @Test
    void what_was_cut_off_stays_and_is_marked() throws Exception {
        Files.writeString(here.resolve("book.txt"), HEAD + "one\ntw");

        file().append(text -> List.of("three"));

        assertThat(text()).isEqualTo(HEAD + "one\ntw # torn\nthree\n");
    }

    @Test
    void a_decision_that_fails_adds_nothing() throws Exception {
        file().append(text -> List.of("one"));

        assertThatThrownBy(() -> file().append(text -> {
                    throw new IllegalStateException("not like that");
                }))
                .isInstanceOf(IllegalStateException.class);

        assertThat(text()).isEqualTo(HEAD + "one\n");
    }

    @Test
    void lines_are_taken_out_only_on_request() throws Exception {
        file().append(text -> List.of("one", "two", "three"));

        assertThat(file().takeOut(line -> line.startsWith("t") ? Optional.empty() : Optional.of(line)))
                .isEqualTo(2);

        assertThat(text()).isEqualTo(HEAD + "one\n");
    }

    @Test
    void a_folder_is_no_book() throws Exception {
        Files.createDirectory(here.resolve("book.txt"));

        assertThatThrownBy(() -> file().append(text -> List.of("one"))).isInstanceOf(CannotWrite.class);
    }

    /** Appends its own numbers one by one; every eighth time it takes out a line that says so. */
    static final class Writer {
        private Writer() {}

        /** @param args the file, a letter, how many */
        public static void main(String[] args) throws CannotWrite {
            var file = new AppendedFile(Path.of(args[0]), HEAD, "# torn");
            for (int i = 0; i < Integer.parseInt(args[2]); i++) {
                String line = args[1] + i;
                file.append(text -> List.of(line, "to be taken out"));
                if (i % 8 == 0) {
                    file.takeOut(one -> Optional.of(one).filter(l -> !l.equals("to be taken out")));
                }
            }
        }
    }

    @Test
    void two_programs_at_once_lose_no_line_and_mix_none() throws Exception {
        int each = 40;
        List<Process> writers = new ArrayList<>();
        for (String letter : List.of("a", "b", "c")) {
            writers.add(start(letter, each));
        }
        for (Process writer : writers) {
            assertThat(writer.waitFor()).isZero();
        }

        Map<Character, Integer> next = new HashMap<>();
        List<String> lines =
                text().lines().skip(1).filter(l -> !l.startsWith("to be")).toList();
        for (String line : lines) {
            char letter = line.charAt(0);
            assertThat(line).isEqualTo(letter + "" + (next.merge(letter, 1, Integer::sum) - 1));
        }
        assertThat(lines).hasSize(3 * each);
    }

    private Process start(String letter, int many) throws Exception {
        String classes = Path.of(Writer.class
                        .getProtectionDomain()
                        .getCodeSource()
                        .getLocation()
                        .toURI()) + ":"
                + Path.of(AppendedFile.class
                        .getProtectionDomain()
                        .getCodeSource()
                        .getLocation()
                        .toURI());
        return new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        classes,
                        Writer.class.getName(),
                        here.resolve("book.txt").toString(),
                        letter,
                        Integer.toString(many)))
                .inheritIO()
                .start();
    }

    /** Whatever step fails: the old lines, and then all new lines or none or, where nothing helps, one that is marked later. */
    @Test
    void a_full_disk_costs_no_line_that_was_there() throws Exception {
        for (FailingDisk.Fault fault : FailingDisk.Fault.values()) {
            boolean reached = true;
            for (int step = 1; reached && step < 20; step++) {
                try (FileSystem disk = Jimfs.newFileSystem(Configuration.unix())) {
                    var failing = new FailingDisk(disk, fault, step);
                    Files.createDirectory(disk.getPath("/kitchen"));
                    Path real = disk.getPath("/kitchen/book.txt");
                    Files.writeString(real, HEAD + "one\n");
                    var file = new AppendedFile(failing.root().resolve("book.txt"), HEAD, "# torn");
                    try {
                        file.append(text -> List.of("two", "three"));
                    } catch (CannotWrite told) {
                        assertThat(failing.failed()).isNotEmpty();
                    }
                    reached = !failing.failed().isEmpty();
                    String after = Files.readString(real);
                    assertThat(after).startsWith(HEAD + "one\n");
                    assertThat(HEAD + "one\ntwo\nthree\n").startsWith(after);
                }
            }
        }
    }
}
