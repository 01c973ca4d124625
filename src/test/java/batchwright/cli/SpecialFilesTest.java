package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.ServerSocketChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pipes, devices, sockets, links and folders where a file should be: an error that names them, and never an endless wait. */
@Timeout(value = 2, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SpecialFilesTest {
    private static final String FILES = """
            foods/catalogue.csv foods/labels.csv foods/measures.csv foods/shop.csv foods/yields.csv \
            foods/dishes/baked_oats.yaml profiles/pantry.csv profiles/desk-cutting.yaml""";

    @TempDir
    Path here;

    @BeforeEach
    void files() throws IOException {
        SmallStarter.into(here);
    }

    private void assertRefused(String path, String wrong, String... command) {
        Cli.Result result = Cli.in(here).run(command);

        assertThat(result.code()).as(path + result.both()).isEqualTo(2);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).contains(path + ": error: " + wrong);
        BadCommandLinesTest.assertNoInsides(result);
    }

    @Test
    void a_pipe_does_not_hang() throws Exception {
        for (String path : FILES.split(" ", -1)) {
            Path file = here.resolve(path);
            byte[] whole = Files.readAllBytes(file);
            Files.delete(file);
            assertThat(new ProcessBuilder("mkfifo", file.toString()).start().waitFor())
                    .isZero();
            assertRefused(path, "this is no file but a pipe, a socket or a device", "check");
            Files.delete(file);
            Files.write(file, whole);
        }
    }

    @Test
    void a_pipe_named_as_a_profile_does_not_hang() throws Exception {
        assertThat(new ProcessBuilder("mkfifo", here.resolve("pipe.yaml").toString())
                        .start()
                        .waitFor())
                .isZero();
        assertRefused("pipe.yaml", "this is no file but a pipe", "needs", "pipe.yaml");
        assertRefused("pipe.yaml", "this is no file but a pipe", "plan", "./pipe.yaml");
    }

    @Test
    void a_device_is_no_file() throws IOException {
        assertRefused("/dev/zero", "this is no file but a pipe", "needs", "/dev/zero");
        Files.delete(here.resolve("profiles/pantry.csv"));
        Files.createSymbolicLink(here.resolve("profiles/pantry.csv"), Path.of("/dev/zero"));

        assertRefused("profiles/pantry.csv", "this is no file but a pipe, a socket or a device", "check");
    }

    @Test
    void a_socket_is_no_file() throws IOException {
        Path pantry = here.resolve("profiles/pantry.csv");
        Files.delete(pantry);
        Path name = Files.createTempDirectory("s").resolve("s"); // names of sockets must be short
        try (var socket = ServerSocketChannel.open(StandardProtocolFamily.UNIX)) {
            socket.bind(UnixDomainSocketAddress.of(name));
            Files.createSymbolicLink(pantry, name);
            assertRefused("profiles/pantry.csv", "this is no file but a pipe, a socket or a device", "check");
        } finally {
            Files.deleteIfExists(name);
            Files.delete(name.getParent());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "foods/shop.csv",
                "profiles/pantry.csv",
                "foods/dishes/baked_oats.yaml",
                "foods/dishes",
                "profiles"
            })
    void a_link_to_nothing_and_one_in_a_circle(String path) throws IOException {
        Path link = here.resolve(path);
        Files.move(link, here.resolve("moved"));

        Files.createSymbolicLink(link, Path.of("nowhere"));
        assertRefused(path, "this link leads nowhere", "check");
        Files.delete(link);
        Files.createSymbolicLink(link, link.getFileName());
        assertRefused(path, "this link cannot be followed: it leads in a circle", "check");
        Files.delete(link);

        Files.createSymbolicLink(link, here.resolve("moved"));
        assertThat(Cli.in(here).run("check").both())
                .as("a link to what is there")
                .isEmpty();
    }

    /** The kitchen lies on a disk that is not there today: the starter files would be a lie. */
    @Test
    void a_kitchen_behind_a_link_to_nothing_is_not_replaced_by_the_starter_files() throws IOException {
        Files.move(here.resolve("foods"), here.resolve("moved"));
        Files.createSymbolicLink(here.resolve("foods"), Path.of("nowhere"));

        assertRefused("foods", "this link leads nowhere", "dishes");
        assertRefused("foods", "this link leads nowhere", "dishes", "--data", ".");
    }

    @ParameterizedTest
    @ValueSource(strings = {"foods/dishes/soup.yaml", "profiles/somebody.yaml"})
    void a_folder_in_place_of_a_page(String path) throws IOException {
        Files.createDirectories(here.resolve(path));

        assertRefused(path, "this is a folder", "check");
    }

    @Test
    void a_file_in_place_of_a_folder() throws IOException {
        for (String folder : List.of("profiles", "foods/dishes")) {
            Files.move(here.resolve(folder), here.resolve("moved"));
            Files.writeString(here.resolve(folder), "");
            assertRefused(folder, "this is a file", "check");
            Files.delete(here.resolve(folder));
            Files.move(here.resolve("moved"), here.resolve(folder));
        }
    }

    @Test
    void a_folder_of_too_many_files() throws IOException {
        for (int i = 0; i <= 10_000; i++) {
            Files.createFile(here.resolve("profiles/p" + i));
        }
        assertRefused("profiles", "more than 10000 files are in this folder", "check");
    }
}
