package batchwright.app.memory;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Which files a kitchen has, and by what each of them would be seen to have changed. */
record FilesStamp(Map<String, OneFile> files) {
    private static final int MOST_FILES = 20_000;
    /** foods/dishes/SHELF/NAME.yaml, below foods */
    private static final int DEPTH = 3;

    /** @param key of the file itself: another is moved in place of it when it is written as a whole */
    private record OneFile(long size, FileTime changed, String key) {
        static OneFile of(BasicFileAttributes file) {
            return new OneFile(file.size(), file.lastModifiedTime(), Objects.toString(file.fileKey()));
        }
    }

    /** Empty when that cannot be found out. */
    static Optional<FilesStamp> of(Path folder) {
        Map<String, OneFile> files = new TreeMap<>();
        for (String inside : new String[] {"foods", "profiles"}) {
            Path top = folder.resolve(inside);
            try (Stream<Path> paths =
                    Files.exists(top) ? Files.walk(top, DEPTH, FileVisitOption.FOLLOW_LINKS) : Stream.of()) {
                for (Path path : (Iterable<Path>) paths::iterator) {
                    files.put(path.toString(), OneFile.of(Files.readAttributes(path, BasicFileAttributes.class)));
                    if (files.size() > MOST_FILES) {
                        return Optional.empty();
                    }
                }
            } catch (IOException | UncheckedIOException | SecurityException unknown) {
                return Optional.empty();
            }
        }
        return Optional.of(new FilesStamp(files));
    }
}
