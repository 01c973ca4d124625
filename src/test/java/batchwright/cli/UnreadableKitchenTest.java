package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.marschall.memoryfilesystem.MemoryFileSystemBuilder;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What may not be read is never taken for what is not there. The file system is one in memory that keeps permissions for everybody; the
 * same with processes and a disk: {@link PermissionsTest}.
 */
class UnreadableKitchenTest {
    private FileSystem memory;
    private Path here;

    @BeforeEach
    void kitchen() throws IOException {
        memory = MemoryFileSystemBuilder.newLinux().build("kitchen");
        here = memory.getPath("/people/cook");
        Files.createDirectories(here);
        Folders.starter(here);
        assertThat(Cli.in(here).run("check").both()).isEmpty();
    }

    @AfterEach
    void close() throws IOException {
        memory.close();
    }

    /** Nothing may be done with files; folders may be listed and not entered. */
    @ParameterizedTest
    @CsvSource({
        "foods/catalogue.csv, ---------, check",
        "foods/labels.csv, ---------, check",
        "foods/measures.csv, ---------, check",
        "foods/shop.csv, ---------, check",
        "foods/yields.csv, ---------, check",
        "foods/dishes/lentil_ragu.yaml, ---------, check",
        "profiles/pantry.csv, ---------, check",
        "profiles/desk-cutting.yaml, ---------, check",
        "profiles/desk-cutting.yaml, ---------, needs desk-cutting",
        "profiles/desk-cutting.yaml, ---------, needs profiles/desk-cutting.yaml",
        "foods, ---------, check",
        "foods, r--r--r--, check",
        "foods/dishes, ---------, check",
        "foods/dishes, ---------, dishes lentil_ragu",
        "foods/dishes, ---------, plan lifter-gaining",
        "foods/dishes, r--r--r--, dishes",
        "profiles, ---------, check",
        "profiles, ---------, dishes lentil_ragu --kcal 700",
        "profiles, ---------, needs desk-cutting",
        "profiles, ---------, needs profiles/desk-cutting.yaml",
        "profiles, r--r--r--, check",
        "'', ---------, check",
        "'', r--r--r--, check"
    })
    void is_an_error_with_its_path(String path, String permissions, String command) throws IOException {
        Files.setPosixFilePermissions(here.resolve(path), PosixFilePermissions.fromString(permissions));

        Cli.Result result = Cli.in(here).run(command.split(" ", -1));

        assertThat(result.code()).as(result.both()).isEqualTo(2);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).contains(path).containsPattern("error: permission to read this (folder )?is denied");
        assertThat(result.err()).doesNotContain("there is no");
        BadCommandLinesTest.assertNoInsides(result);
    }

    @Test
    void a_folder_named_by_data_is_not_said_to_be_missing() throws IOException {
        Files.setPosixFilePermissions(here, PosixFilePermissions.fromString("---------"));

        for (String data : List.of("/people/cook/kitchen", "/people/cook", "/people/cook/foods/shop.csv")) {
            Cli.Result result = Cli.in(memory.getPath("/")).run("dishes", "--data", data);

            assertThat(result.code()).isEqualTo(2);
            assertThat(result.err())
                    .contains("error: permission to read this is denied")
                    .contains("/people/cook");
        }
    }

    /** An editor's lock: a hidden link to nothing. */
    @Test
    void a_hidden_file_is_no_dish() throws IOException {
        Files.createSymbolicLink(here.resolve("foods/dishes/.#lentil_ragu.yaml"), memory.getPath("cook@kitchen.123"));
        Files.writeString(here.resolve("profiles/._desk-cutting.yaml"), "no profile");

        assertThat(Cli.in(here).run("check").both()).isEmpty();
    }
}
