package batchwright.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file of whole lines that grows. */
class GrowingFileTest {
    @TempDir
    Path here;

    private Path file;

    @BeforeEach
    void named() {
        file = here.resolve("lines.jsonl");
    }

    private void add(boolean anew, String lines) throws IOException, CannotWrite {
        try (GrowingFile growing = GrowingFile.open(file, anew)) {
            growing.add(lines);
        }
    }

    @Test
    void what_is_added_is_there_before_the_file_is_closed() throws IOException, CannotWrite {
        try (GrowingFile growing = GrowingFile.open(file, true)) {
            growing.add("one\n");
            assertThat(file).hasContent("one\n");
            growing.add("ångström\n");
        }
        assertThat(Files.readString(file)).isEqualTo("one\nångström\n");
    }

    @Test
    void of_a_line_that_was_cut_off_nothing_stays() throws IOException, CannotWrite {
        Files.writeString(file, "one\ntwo\nthr");

        add(false, "three\n");

        assertThat(Files.readString(file)).isEqualTo("one\ntwo\nthree\n");
    }

    @Test
    void a_file_of_one_half_line_begins_again() throws IOException, CannotWrite {
        Files.writeString(file, "on");

        add(false, "one\n");

        assertThat(Files.readString(file)).isEqualTo("one\n");
    }

    @Test
    void anew_it_is_empty_first() throws IOException, CannotWrite {
        Files.writeString(file, "one\n");

        add(true, "two\n");

        assertThat(Files.readString(file)).isEqualTo("two\n");
    }

    @Test
    void where_there_is_no_folder_nothing_can_be_written() {
        assertThatThrownBy(() -> GrowingFile.open(here.resolve("not/there"), true))
                .isInstanceOf(CannotWrite.class);
    }
}
