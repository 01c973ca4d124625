package batchwright.files;

import batchwright.text.Problem;
import batchwright.text.SourceFile;
import batchwright.text.Span;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Files in a folder on the disk. Read only: nothing is ever written. */
public final class FolderFiles implements DataFiles {
    private final Path root;

    /** @param root the folder that holds foods/ and profiles/; empty for the current folder */
    public FolderFiles(Path root) {
        this.root = root.normalize();
    }

    /** A path may also be absolute. The file is shown to the user under the root's own name. */
    @Override
    public Optional<Read<SourceFile>> read(String path) {
        Path file;
        try {
            file = root.resolve(path);
        } catch (InvalidPathException notAPath) {
            return Optional.empty();
        }
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        String shown = shown(file);
        try (InputStream in = Files.newInputStream(file)) {
            // One byte more than is taken, so that the decoder can say that it is too much; a device may never end.
            return Optional.of(Decoder.decode(shown, in.readNBytes(Decoder.MOST_BYTES + 1)));
        } catch (IOException unreadable) {
            String wrong = Files.isDirectory(file) ? "this is a folder" : "the file cannot be opened";
            var nothing = new SourceFile(shown, List.of());
            return Optional.of(
                    Read.failed(Problem.error(Span.whole(nothing), wrong, "expected a text file that you may read")));
        }
    }

    /** Where a path such as profiles/me.yaml is on the disk. */
    public Path path(String path) {
        return root.resolve(path);
    }

    @Override
    public List<String> list(String folder) {
        return entries(folder, Files::isRegularFile);
    }

    @Override
    public List<String> folders(String folder) {
        return entries(folder, Files::isDirectory);
    }

    private List<String> entries(String folder, Predicate<Path> kind) {
        Path directory = root.resolve(folder);
        if (!Files.isDirectory(directory)) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(directory)) {
            return entries.filter(kind)
                    .map(entry -> folder + "/" + entry.getFileName())
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    @Override
    public String shown(String path) {
        return shown(root.resolve(path));
    }

    private static String shown(Path file) {
        return file.normalize().toString().replace('\\', '/');
    }
}
