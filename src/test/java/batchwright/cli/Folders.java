package batchwright.cli;

import batchwright.app.WriteStarterFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Folders for tests: written from the starter files, changed, and compared. */
final class Folders {
    private Folders() {}

    static Path starter(Path folder) {
        new WriteStarterFiles().into(folder);
        return folder;
    }

    /** The starter files, and something at home. */
    static Path stocked(Path folder) throws IOException {
        return stock(starter(folder));
    }

    /** Puts something into the pantry of a kitchen. */
    static Path stock(Path folder) throws IOException {
        Files.copy(
                Path.of("src/test/resources/stocked_pantry.csv"),
                folder.resolve("profiles/pantry.csv"),
                StandardCopyOption.REPLACE_EXISTING);
        return folder;
    }

    static void replace(Path file, String old, String other) throws IOException {
        String content = Files.readString(file);
        if (!content.contains(old)) {
            throw new IllegalArgumentException("old (" + old + ") is not in " + file + ".");
        }
        Files.writeString(file, content.replace(old, other));
    }

    static void keepDishes(Path folder, String... kept) throws IOException {
        List<String> files = Stream.of(kept).map(dish -> dish + ".yaml").toList();
        try (Stream<Path> dishes = Files.list(folder.resolve("foods/dishes"))) {
            for (Path other : dishes.filter(d -> Files.isRegularFile(d)
                            && !files.contains(d.getFileName().toString()))
                    .toList()) {
                Files.delete(other);
            }
        }
    }

    /** Every path with its content; folders with an empty one. */
    static Map<String, String> content(Path folder) throws IOException {
        var content = new TreeMap<String, String>();
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.toList()) {
                content.put(
                        folder.relativize(path).toString(),
                        Files.isRegularFile(path)
                                ? new String(Files.readAllBytes(path), StandardCharsets.ISO_8859_1)
                                : "");
            }
        }
        return content;
    }
}
