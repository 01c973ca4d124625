package batchwright.files.disk;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.FilesInMemory;
import batchwright.files.FoundIn;
import batchwright.files.KitchenReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FolderFilesTest {
    @Test
    void files_are_shown_under_the_name_of_the_folder(@TempDir Path root) throws IOException {
        Files.createDirectories(root.resolve("foods/dishes"));
        Files.writeString(root.resolve("foods/b.csv"), "b");
        Files.writeString(root.resolve("foods/a.csv"), "a");
        Files.writeString(root.resolve("foods/.hidden.csv"), "h");
        var files = new FolderFiles(root);
        assertThat(FoundIn.there(files.list("foods")))
                .containsExactly(
                        new DataFiles.Entry("foods/a.csv", false),
                        new DataFiles.Entry("foods/b.csv", false),
                        new DataFiles.Entry("foods/dishes", true));
        assertThat(FoundIn.isAbsent(files.list("profiles"))).isTrue();
        assertThat(FoundIn.there(files.read("foods/a.csv")).path())
                .isEqualTo(root + "/foods/a.csv")
                .isEqualTo(files.shown("foods/a.csv"));
        assertThat(FoundIn.there(files.read(root.resolve("foods/a.csv").toString()))
                        .lines())
                .containsExactly("a");
        assertThat(new FolderFiles(Path.of("")).shown("foods/a.csv")).isEqualTo("foods/a.csv");
    }

    @Test
    void what_is_no_text_file_is_a_problem_and_what_is_not_there_is_nothing(@TempDir Path root) {
        var files = new FolderFiles(root);
        assertThat(FoundIn.isAbsent(files.read("nothing.csv"))).isTrue();
        assertThat(FoundIn.isAbsent(files.read("nul\u0000.csv"))).isTrue();
        assertThat(FoundIn.isAbsent(files.read("x".repeat(300)))).isTrue();
        assertThat(FoundIn.isAbsent(files.read("x/".repeat(3000)))).isTrue();
        assertThat(FoundIn.problem(files.read("")).wrong()).isEqualTo("this is a folder");
    }

    @Test
    void a_file_where_a_folder_should_be_is_a_problem_and_so_is_what_lies_in_it(@TempDir Path root) throws IOException {
        Files.writeString(root.resolve("profiles"), "");
        var files = new FolderFiles(root);

        assertThat(FoundIn.problem(files.list("profiles")).wrong()).isEqualTo("this is a file");
        assertThat(FoundIn.problem(files.read("profiles/pantry.csv")).wrong())
                .isEqualTo("a part of this path is a file");
    }

    /** The system's own file: plain by its attributes, and reading its beginning is an input/output error. */
    @Test
    void a_fault_while_reading_is_a_problem() {
        org.junit.jupiter.api.Assumptions.assumeTrue(Files.isReadable(Path.of("/proc/self/mem")), "only Linux has it");

        assertThat(FoundIn.problem(new FolderFiles(Path.of("/proc/self")).read("mem"))
                        .render())
                .startsWith("/proc/self/mem: error: this cannot be read");
    }

    @ParameterizedTest
    @ValueSource(ints = {8 * 1024 * 1024 + 1, 40 * 1024 * 1024})
    void a_file_that_is_too_large_is_not_read(int bytes, @TempDir Path root) throws IOException {
        try (var file = new java.io.RandomAccessFile(root.resolve("a.csv").toFile(), "rw")) {
            file.setLength(bytes);
        }
        assertThat(FoundIn.problem(new FolderFiles(root).read("a.csv")).wrong())
                .isEqualTo("the file is larger than 8 MB");
    }

    @Test
    void all_files_missing_is_told_file_by_file(@TempDir Path root) {
        assertThat(KitchenReader.read(new FolderFiles(root), FilesInMemory.DAY).problems())
                .hasSize(5)
                .allSatisfy(p -> assertThat(p.at().file().path()).startsWith(root.toString()));
    }
}
