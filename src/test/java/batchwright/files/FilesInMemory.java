package batchwright.files;

import static java.nio.charset.StandardCharsets.UTF_8;

import batchwright.files.disk.DataFiles;
import batchwright.files.disk.Decoder;
import batchwright.files.disk.Found;
import batchwright.files.disk.Read;
import batchwright.files.disk.StarterFiles;
import batchwright.files.profile.EaterReader;
import batchwright.files.shop.PriceDates;
import batchwright.food.Kitchen;
import batchwright.text.Problem;
import batchwright.text.SourceFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Files of a test: a folder, with single files replaced or taken away. */
public final class FilesInMemory implements DataFiles {
    /** The cooking day of the tests of this package. */
    public static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    static final Path GALLERY = Path.of("src/test/resources/errors");

    private final Map<String, byte[]> files = new TreeMap<>();

    /** The small valid workspace that the examples of errors are laid over. */
    public static FilesInMemory base() {
        return new FilesInMemory().withFolder(GALLERY.resolve("_base"));
    }

    public static FilesInMemory starter() {
        var starter = new StarterFiles();
        var files = new FilesInMemory();
        starter.paths().forEach(path -> files.with(path, starter.bytes(path).orElseThrow()));
        return files;
    }

    public FilesInMemory with(String path, byte[] bytes) {
        files.put(path, bytes);
        return this;
    }

    public FilesInMemory with(String path, String text) {
        return with(path, text.getBytes(UTF_8));
    }

    FilesInMemory without(String path) {
        files.remove(path);
        return this;
    }

    FilesInMemory withFolder(Path folder) {
        try (Stream<Path> found = Files.walk(folder)) {
            for (Path file : found.filter(Files::isRegularFile).toList()) {
                with(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<String> paths() {
        return List.copyOf(files.keySet());
    }

    byte[] bytes(String path) {
        return Objects.requireNonNull(files.get(path)).clone();
    }

    public String text(String path) {
        return new String(bytes(path), UTF_8);
    }

    /** All problems of all files. */
    public List<Problem> problems() {
        Read<Kitchen> kitchen = KitchenReader.read(this, DAY);
        var problems = new ArrayList<>(kitchen.problems());
        kitchen.value().map(k -> PriceDates.warnings(this, k)).ifPresent(problems::addAll);
        paths().stream()
                .filter(path -> path.matches("profiles/[^/]*\\.yaml"))
                .forEach(path -> problems.addAll(
                        EaterReader.read(this, path, kitchen.value()).problems()));
        return problems;
    }

    @Override
    public Found<SourceFile> read(String path) {
        byte[] bytes = files.get(path);
        return bytes == null ? new Found.Absent<>() : Decoder.decode(path, bytes);
    }

    @Override
    public Found<List<Entry>> list(String folder) {
        String prefix = folder + "/";
        return new Found.There<>(files.keySet().stream()
                .filter(path -> path.startsWith(prefix))
                .map(path -> entry(path, path.indexOf('/', prefix.length())))
                .distinct()
                .toList());
    }

    /** @param end of the folder in it, or -1 */
    private static Entry entry(String path, int end) {
        return new Entry(end < 0 ? path : path.substring(0, end), end >= 0);
    }
}
