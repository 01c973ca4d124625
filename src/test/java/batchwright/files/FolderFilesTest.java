package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderFilesTest {
    @Test
    void files_are_shown_under_the_name_of_the_folder(@TempDir Path root) throws IOException {
        Files.createDirectories(root.resolve("foods/dishes"));
        Files.writeString(root.resolve("foods/b.csv"), "b");
        Files.writeString(root.resolve("foods/a.csv"), "a");
        var files = new FolderFiles(root);
        assertThat(files.list("foods")).containsExactly("foods/a.csv", "foods/b.csv");
        assertThat(files.list("profiles")).isEmpty();
        assertThat(files.read("foods/a.csv").orElseThrow().value().orElseThrow().path())
                .isEqualTo(root + "/foods/a.csv")
                .isEqualTo(files.shown("foods/a.csv"));
        assertThat(files.read(root.resolve("foods/a.csv").toString())).isPresent();
        assertThat(new FolderFiles(Path.of("")).shown("foods/a.csv")).isEqualTo("foods/a.csv");
    }

    @Test
    void what_is_no_text_file_is_a_problem_and_what_is_not_there_is_nothing(@TempDir Path root) {
        var files = new FolderFiles(root);
        assertThat(files.read("nothing.csv")).isEmpty();
        assertThat(files.read("nul\u0000.csv")).isEmpty();
        assertThat(files.read("").orElseThrow().problems())
                .singleElement()
                .satisfies(p -> assertThat(p.wrong()).isEqualTo("this is a folder"));
    }

    @Test
    void all_files_missing_is_told_file_by_file(@TempDir Path root) {
        assertThat(KitchenReader.read(new FolderFiles(root), FilesInMemory.DAY).problems())
                .hasSize(5)
                .allSatisfy(p -> assertThat(p.at().file().path()).startsWith(root.toString()));
    }
}
