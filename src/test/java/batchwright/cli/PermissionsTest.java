package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What may not be read, on a real disk. The system's administrator may read all, so then the program runs as nobody: with setpriv of
 * util-linux, without which these tests are skipped unless the system property {@code batchwright.cross-checks} is {@code required}.
 */
class PermissionsTest {
    private static final boolean REQUIRED = "required".equals(System.getProperty("batchwright.cross-checks"));
    private static final Set<PosixFilePermission> NOTHING = Set.of();

    @TempDir
    static Path program;

    private static String classPath = "";
    private static boolean isRoot;

    @TempDir
    Path here;

    @BeforeAll
    static void copy() throws IOException {
        isRoot = "root".equals(System.getProperty("user.name"));
        assumeTrue(REQUIRED || !isRoot || Files.exists(Path.of("/usr/bin/setpriv")), "setpriv is not there");
        open(program);
        classPath = Program.copiedClassPath(program);
    }

    @AfterAll
    static void end() {
        classPath = "";
    }

    @BeforeEach
    void kitchen() throws IOException {
        open(here);
        Folders.starter(here);
        assertThat(run("check").both()).isEmpty();
    }

    private static void open(Path folder) throws IOException {
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private Cli.Result run(String... args) throws IOException {
        var process = Program.in(here).classPath(classPath);
        return (isRoot ? process.behind("setpriv", "--reuid=65534", "--regid=65534", "--clear-groups") : process)
                .run(args);
    }

    private void assertDenied(String path, String permissions, String shown, String... command) throws IOException {
        Path locked = here.resolve(path);
        Set<PosixFilePermission> before = Files.getPosixFilePermissions(locked);
        Files.setPosixFilePermissions(
                locked, permissions.isEmpty() ? NOTHING : PosixFilePermissions.fromString(permissions));
        try {
            Cli.Result result = run(command);

            assertThat(result.code()).as(result.both()).isEqualTo(2);
            assertThat(result.out()).isEmpty();
            assertThat(result.err())
                    .containsPattern("(?m)^" + shown + ": error: permission to read this (folder )?is denied$");
            BadCommandLinesTest.assertNoInsides(result);
        } finally {
            Files.setPosixFilePermissions(locked, before);
        }
    }

    @Test
    void a_file_that_may_not_be_read() throws IOException {
        assertDenied("profiles/lifter-gaining.yaml", "", "profiles/lifter-gaining.yaml", "needs", "lifter-gaining");
        assertDenied("foods/shop.csv", "", "foods/shop.csv", "dishes");
    }

    /** It once was the price of a dish without what is at home, called proven cheapest. */
    @Test
    void a_pantry_in_a_locked_folder_is_not_an_empty_one() throws IOException {
        assertDenied("profiles", "", "profiles", "check");
        assertDenied("profiles", "", "profiles/pantry.csv", "dishes", "lentil_ragu", "--kcal", "700");
    }

    @Test
    void a_locked_folder_of_dishes_is_not_one_without_dishes() throws IOException {
        assertDenied("foods/dishes", "", "foods/dishes", "check");
        assertDenied("foods/dishes", "r--r--r--", "foods/dishes", "dishes");
        assertDenied("foods/dishes", "--x--x--x", "foods/dishes", "dishes");
    }

    @Test
    void a_locked_folder_of_foods_is_not_replaced_by_the_starter_files() throws IOException {
        assertDenied("foods", "", "foods/catalogue.csv", "dishes");
        assertDenied("foods", "", here + "/foods/catalogue.csv", "dishes", "--data", here.toString());
        assertDenied("", "", here + "/foods", "dishes", "--data", here.toString());
    }
}
