package batchwright.write;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever step fails, a file is the old one or the new one, whole, and nothing else has changed. */
class FaultsTest {
    private static final String NEW = "mark, new\n".repeat(500);
    private static final String USERS = "of the user\n";
    private static final Map<String, byte[]> FOLDER = Map.of(
            "foods/catalogue.csv", bytes("catalogue"),
            "foods/dishes/a.yaml", bytes("dish a"),
            "foods/dishes/b.yaml", bytes("dish b"),
            "profiles/pantry.csv", bytes("pantry"));
    /** More than there are steps in any of the tasks. */
    private static final int MANY = 200;

    /** What is written. */
    enum Task {
        REPLACE {
            @Override
            void prepare(Path root) throws IOException {
                Files.writeString(root.resolve("plan.html"), "mark, old\n");
            }

            @Override
            void run(Path root) throws CannotWrite {
                output(root, "plan.html").write(NEW);
            }

            @Override
            Map<String, String> makes() {
                return Map.of("plan.html", NEW);
            }
        },
        CREATE {
            @Override
            void run(Path root) throws CannotWrite {
                output(root, "plan.html").write(NEW);
            }

            @Override
            Map<String, String> makes() {
                return Map.of("plan.html", NEW);
            }
        },
        TRY_OUT {
            @Override
            void run(Path root) throws CannotWrite {
                output(root, "plan.html").tryOut();
            }

            @Override
            Map<String, String> makes() {
                return Map.of();
            }
        },
        PROFILE {
            @Override
            void run(Path root) throws CannotWrite {
                new NewFile(root.resolve("profiles/bob.yaml")).write(NEW);
            }

            @Override
            Map<String, String> makes() {
                return Map.of("profiles/bob.yaml", NEW);
            }
        },
        FOLDER_THAT_IS_NOT_THERE {
            @Override
            void run(Path root) throws CannotWrite {
                new WholeFolder(root.resolve("my/kitchen"), FOLDER).write();
            }

            @Override
            Map<String, String> makes() {
                Map<String, String> made = new TreeMap<>();
                FOLDER.forEach((path, content) -> made.put("my/kitchen/" + path, text(content)));
                return made;
            }
        },
        FOLDER_THAT_IS_THERE {
            @Override
            void run(Path root) throws CannotWrite {
                new WholeFolder(root, FOLDER).write();
            }

            @Override
            Map<String, String> makes() {
                Map<String, String> made = new TreeMap<>();
                FOLDER.forEach((path, content) -> made.put(path, text(content)));
                return made;
            }
        },
        FOLDER_OF_WHICH_A_PART_IS_THERE {
            @Override
            void prepare(Path root) throws IOException {
                Files.createDirectories(root.resolve("foods/dishes"));
                Files.writeString(root.resolve("foods/dishes/b.yaml"), "dish b");
                Files.writeString(root.resolve("foods/notes.txt"), USERS);
            }

            @Override
            void run(Path root) throws CannotWrite {
                new WholeFolder(root, FOLDER).write();
            }

            @Override
            Map<String, String> makes() {
                return FOLDER_THAT_IS_THERE.makes();
            }
        };

        void prepare(Path root) throws IOException {}

        abstract void run(Path root) throws CannotWrite;

        abstract Map<String, String> makes();

        /** Whether all comes at once. */
        boolean isOneStep() {
            return this != FOLDER_THAT_IS_THERE && this != FOLDER_OF_WHICH_A_PART_IS_THERE;
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String text(byte[] content) {
        return new String(content, StandardCharsets.UTF_8);
    }

    private static Output output(Path root, String name) {
        return new Output(root.resolve(name), text -> text.startsWith("mark"), new Guard(Optional.empty(), false));
    }

    static Stream<Arguments> tasksAndFaults() {
        return Stream.of(Task.values())
                .flatMap(task -> Stream.of(FailingDisk.Fault.values()).map(fault -> Arguments.of(task, fault)));
    }

    @ParameterizedTest
    @MethodSource("tasksAndFaults")
    void every_step_may_fail(Task task, FailingDisk.Fault fault) throws Exception {
        for (int step = 1; step < MANY; step++) {
            try (FileSystem memory = Jimfs.newFileSystem(unix().build())) {
                Path root = memory.getPath("/kitchen");
                prepare(task, root);
                Map<String, String> before = content(root);
                var disk = new FailingDisk(memory, fault, step);

                String said = says(task, disk.root());

                String where = disk.failed() + ", step " + step;
                check(task, before, root, where);
                if (fault == FailingDisk.Fault.ONCE && !disk.failed().equals("delete")) {
                    assertThat(leftOver(root)).as(where).isEmpty();
                }
                if (said.isEmpty()) {
                    assertThat(content(root)).as(where).isEqualTo(after(task, before));
                }
                doneAgain(task, before, root, where);
                if (disk.failed().isEmpty()) {
                    assertThat(step).isGreaterThan(3); // create, write, and take away again or more
                    return;
                }
            }
        }
        throw new AssertionError("more than " + MANY + " steps");
    }

    /** Room for so many blocks of 512 bytes and no more. */
    @ParameterizedTest
    @MethodSource("tasks")
    void the_disk_may_be_full_at_any_point(Task task) throws Exception {
        String last = "";
        for (int blocks = 4; blocks < MANY; blocks++) {
            Configuration small =
                    unix().setBlockSize(512).setMaxSize(512L * blocks).build();
            try (FileSystem memory = Jimfs.newFileSystem(small)) {
                Path root = memory.getPath("/kitchen");
                prepare(task, root);
                Map<String, String> before = content(root);

                String said = says(task, root);

                last = said;
                String where = "full at " + blocks + " blocks";
                check(task, before, root, where);
                assertThat(leftOver(root)).as(where).isEmpty();
                if (said.isEmpty()) {
                    assertThat(content(root)).as(where).isEqualTo(after(task, before));
                    return;
                }
            }
        }
        throw new AssertionError("never enough room: " + last);
    }

    static Task[] tasks() {
        return Task.values();
    }

    @Test
    void what_an_interrupted_run_left_is_in_nobodys_way() throws Exception {
        try (FileSystem memory = Jimfs.newFileSystem(unix().build())) {
            Path root = memory.getPath("/kitchen");
            prepare(Task.FOLDER_THAT_IS_THERE, root);
            Files.createDirectories(root.resolve(".batchwright-1.tmp/foods"));
            Files.writeString(root.resolve(".batchwright-2.tmp"), "half");

            Task.FOLDER_THAT_IS_THERE.run(root);
            Task.CREATE.run(root);

            assertThat(content(root)).containsAllEntriesOf(Task.FOLDER_THAT_IS_THERE.makes());
            assertThat(root.resolve(".batchwright-2.tmp")).hasContent("half");
        }
    }

    private static Configuration.Builder unix() {
        return Configuration.unix().toBuilder().setAttributeViews("basic", "owner", "posix", "unix");
    }

    private static void prepare(Task task, Path root) throws IOException {
        Files.createDirectory(root);
        Files.writeString(root.resolve("notes.txt"), USERS);
        task.prepare(root);
    }

    /** What is said when something could not be written; else empty. */
    private static String says(Task task, Path root) {
        try {
            task.run(root);
            return "";
        } catch (CannotWrite cannot) {
            assertThat(cannot.cure()).isNotBlank();
            return cannot.wrong();
        }
    }

    private static Map<String, String> after(Task task, Map<String, String> before) {
        Map<String, String> after = new TreeMap<>(before);
        after.putAll(task.makes());
        return after;
    }

    private static void check(Task task, Map<String, String> before, Path root, String where) throws IOException {
        Map<String, String> now = content(root);
        Map<String, String> after = after(task, before);
        if (task.isOneStep()) {
            assertThat(now).as(where).isIn(before, after);
            return;
        }
        assertThat(now).as(where).containsAllEntriesOf(before);
        assertThat(after).as(where).containsAllEntriesOf(now);
        if (task == Task.FOLDER_THAT_IS_THERE) {
            assertThat(count(now, "foods/")).as(where).isIn(0L, 3L);
            assertThat(count(now, "profiles/")).as(where).isIn(0L, 1L);
        }
    }

    private static long count(Map<String, String> content, String prefix) {
        return content.keySet().stream().filter(path -> path.startsWith(prefix)).count();
    }

    /** On a disk that is well again. */
    private static void doneAgain(Task task, Map<String, String> before, Path root, String where) throws IOException {
        String said = says(task, root);
        assertThat(content(root)).as(where + ", then done again").isEqualTo(after(task, before));
        if (task != Task.PROFILE) {
            assertThat(said).as(where + ", then done again").isEmpty();
        }
    }

    /** All files but those that are left over. */
    private static Map<String, String> content(Path root) throws IOException {
        Map<String, String> content = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(root)) {
            paths.filter(path -> Files.isRegularFile(path) && !path.toString().contains("/.batchwright-"))
                    .forEach(path -> content.put(root.relativize(path).toString(), read(path)));
        }
        return content;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> leftOver(Path root) throws IOException {
        try (Stream<Path> paths = Files.walk(root)) {
            return paths.filter(path -> path.toString().contains(".batchwright-"))
                    .toList();
        }
    }
}
