package batchwright.write;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;

/** Tells the folders that hold the files of a kitchen, which their user edits and the program only reads. */
final class Kitchens {
    private static final String FOODS = "foods";
    private static final String PROFILES = "profiles";
    private static final String CATALOGUE = "catalogue.csv";
    private static final List<String> IN_FOODS =
            List.of(CATALOGUE, "labels.csv", "measures.csv", "shop.csv", "yields.csv", "dishes");

    private Kitchens() {}

    /** Whether a path, links in it not followed, leads through foods/ or profiles/ of any kitchen. */
    static boolean leadsInto(Path file) {
        return Stream.iterate(file.getParent(), Objects::nonNull, Path::getParent)
                .anyMatch(folder -> isFoods(folder) || isProfiles(folder));
    }

    /**
     * Whether a real file lies in a kitchen, or is one of its files under another name.
     *
     * @param kitchen the folder that holds foods/ and profiles/; both may be links
     */
    static boolean holds(Path kitchen, Path file) {
        return Stream.of(FOODS, FOODS + "/dishes", PROFILES)
                .map(kitchen::resolve)
                .anyMatch(f -> isInside(f, file));
    }

    private static boolean isInside(Path folder, Path file) {
        try {
            if (file.startsWith(folder.toRealPath())) {
                return true;
            }
            if (!Files.exists(file)) {
                return false;
            }
            try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
                for (Path entry : entries) {
                    if (Files.exists(entry) && Files.isSameFile(entry, file)) {
                        return true;
                    }
                }
            }
            return false;
        } catch (IOException | DirectoryIteratorException notThere) {
            return false;
        }
    }

    /** Under another name, as a link may lead to, it must look all the more like one. */
    private static boolean isFoods(Path folder) {
        long known = IN_FOODS.stream()
                .filter(name -> Files.exists(folder.resolve(name)))
                .count();
        return isCalled(FOODS, folder)
                ? known > 0 || isEmpty(folder)
                : known > 1 && Files.exists(folder.resolve(CATALOGUE));
    }

    private static boolean isProfiles(Path folder) {
        if (!isCalled(PROFILES, folder)) {
            return false;
        }
        return isFoods(folder.resolveSibling(FOODS))
                || Files.exists(folder.resolve("pantry.csv"))
                || !has(folder, "*.yaml").isEmpty();
    }

    private static boolean isCalled(String name, Path folder) {
        return folder.getFileName() != null
                && folder.getFileName().toString().toLowerCase(Locale.ROOT).equals(name);
    }

    private static boolean isEmpty(Path folder) {
        return Files.isDirectory(folder) && has(folder, "*").isEmpty();
    }

    /** At most one. */
    private static List<Path> has(Path folder, String glob) {
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder, glob)) {
            for (Path entry : entries) {
                return List.of(entry);
            }
        } catch (IOException | DirectoryIteratorException unreadable) {
            // Nothing is known of it.
        }
        return List.of();
    }
}
