package batchwright.write;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A folder full of files, made beside its place and moved there in one step. In a folder that is there, each folder that it lacks
 * is moved so, and each file by itself. Nothing that is there is replaced; a file that is there just as it would be written is not
 * in the way, so what was interrupted is finished by doing it again.
 */
public final class WholeFolder {
    private final Path folder;
    private final Map<String, byte[]> files;

    /** @param files content by path below the folder, with forward slashes; each in a folder of its own */
    public WholeFolder(Path folder, Map<String, byte[]> files) {
        this.folder = folder;
        this.files = new TreeMap<>(files);
    }

    /**
     * Writes what is not there yet.
     *
     * @return the paths that were written, below the folder
     * @throws CannotWrite when something is in the way, which is seen before anything is written, or when there is no room
     */
    public List<String> write() throws CannotWrite {
        refuseWhenInTheWay();
        List<String> missing = files.keySet().stream()
                .filter(path -> !Files.exists(folder.resolve(path)))
                .toList();
        try {
            if (Files.exists(folder)) {
                complete(missing);
            } else {
                make(folder, "", missing);
            }
        } catch (IOException why) {
            throw new CannotWrite(
                    CannotWrite.because(folder.toString(), why).wrong(),
                    "Name a folder that you may write to and that has room; or make room and do it again. "
                            + told(missing));
        }
        return missing;
    }

    private String told(List<String> wanted) {
        List<String> written = wanted.stream()
                .filter(path -> Files.exists(folder.resolve(path)))
                .toList();
        return written.isEmpty() ? "Nothing was written." : "Written so far: " + String.join(", ", written) + ".";
    }

    private void refuseWhenInTheWay() throws CannotWrite {
        if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(folder)) {
            throw new CannotWrite(
                    folder + (Files.exists(folder) ? " is a file" : " is a link to something that is not there"),
                    "Name a folder; it is made when it is not there. Nothing was written.");
        }
        List<String> others = new ArrayList<>();
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (isAnother(folder.resolve(file.getKey()), file.getValue())) {
                others.add(file.getKey());
            }
        }
        if (!others.isEmpty()) {
            throw new CannotWrite(
                    "these files are there already: " + String.join(", ", others),
                    "Nothing was written. Name another folder, or move them away first.");
        }
    }

    private static boolean isAnother(Path file, byte[] content) {
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        try {
            return !Files.isRegularFile(file)
                    || Files.size(file) != content.length
                    || !Arrays.equals(Files.readAllBytes(file), content);
        } catch (IOException unreadable) {
            return true;
        }
    }

    /** In a folder that is there; foods, by which a folder is taken for a kitchen, come last. */
    private void complete(List<String> missing) throws IOException {
        Map<String, List<String>> byTop = new TreeMap<>(Comparator.reverseOrder());
        missing.forEach(
                path -> byTop.computeIfAbsent(top(path), t -> new ArrayList<>()).add(path));
        for (Map.Entry<String, List<String>> part : byTop.entrySet()) {
            Path place = folder.resolve(part.getKey());
            if (Files.exists(place)) {
                for (String path : part.getValue()) {
                    addOne(path);
                }
            } else {
                make(place, part.getKey() + "/", part.getValue());
            }
        }
    }

    private static String top(String path) {
        return path.substring(0, path.indexOf('/'));
    }

    private void addOne(String path) throws IOException {
        Path file = folder.resolve(path);
        Path parent = file.toAbsolutePath().getParent();
        if (parent != null) {
            Files.createDirectories(parent);
        }
        WholeFile.create(file, content(path));
    }

    /** @param prefix what the paths begin with up to the place */
    private void make(Path place, String prefix, List<String> paths) throws IOException {
        Path parent = parentOf(place);
        try (var made = new MadeFolders(parent)) {
            Path beside = WholeFile.unused(parent);
            try {
                Files.createDirectory(beside);
                for (String path : paths) {
                    fill(beside, path.substring(prefix.length()), content(path));
                }
                Files.move(beside, parent.resolve(place.getFileName()), StandardCopyOption.ATOMIC_MOVE);
                made.keep();
            } finally {
                discard(beside);
            }
            WholeFile.force(parent);
        }
    }

    private static Path parentOf(Path place) throws IOException {
        @Nullable Path parent = place.toAbsolutePath().getParent();
        if (parent == null || !Files.isDirectory(parent)) {
            parent = place.toAbsolutePath().normalize().getParent();
        }
        if (parent == null) {
            throw new IOException("it is no folder in another");
        }
        return parent;
    }

    private byte[] content(String path) {
        byte @Nullable [] content = files.get(path);
        if (content == null) {
            throw new IllegalArgumentException("path (" + path + ") must be one of the files.");
        }
        return content;
    }

    private static void fill(Path root, String path, byte[] content) throws IOException {
        Path file = root.resolve(path);
        Path parent = file.getParent();
        if (parent != null) {
            Files.createDirectories(parent);
        }
        WholeFile.fill(file, content);
    }

    /** Only what was made here, and no further than into folders: links are taken away, not followed. */
    private static void discard(Path beside) {
        if (!Files.exists(beside, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try {
            Files.walkFileTree(beside, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                    Files.delete(file);
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult postVisitDirectory(Path done, @Nullable IOException why) throws IOException {
                    Files.delete(done);
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException stays) {
            // What is left has a name that nobody else uses, and is in nobody's way.
        }
    }
}
