package batchwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The starter files with some of the dishes and only the foods that are named in what is kept: quick to read many times. */
final class SmallStarter {
    private static final int ONE_IN = 3;
    private static final Pattern NO_NAME = Pattern.compile("[^a-z0-9_]+");

    private final Path folder;

    private SmallStarter(Path folder) {
        this.folder = folder;
    }

    static void into(Path folder) throws IOException {
        Folders.starter(folder);
        new SmallStarter(folder).cut();
    }

    private void cut() throws IOException {
        List<Path> kept = new ArrayList<>(files("profiles"));
        Set<String> wished = names(kept);
        List<Path> dishes = files("foods/dishes");
        for (int i = 0; i < dishes.size(); i++) {
            Path dish = dishes.get(i);
            if (i % ONE_IN == 0 || wished.contains(dish.getFileName().toString().replace(".yaml", ""))) {
                kept.add(dish);
            } else {
                Files.delete(dish);
            }
        }
        clearShelves();
        Set<String> named = names(kept);
        for (Path table : files("foods")) {
            Files.writeString(
                    table,
                    Files.readAllLines(table).stream()
                            .filter(line -> line.startsWith("#") || named.contains(line.replaceFirst(",.*", "")))
                            .collect(Collectors.joining("\n", "", "\n")));
        }
    }

    private void clearShelves() throws IOException {
        try (Stream<Path> entries = Files.list(folder.resolve("foods/dishes"))) {
            for (Path shelf : entries.filter(Files::isDirectory).toList()) {
                for (Path dish : files("foods/dishes/" + shelf.getFileName())) {
                    Files.delete(dish);
                }
                Files.delete(shelf);
            }
        }
    }

    private List<Path> files(String inside) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(inside))) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    /** Every word that may be a name; that of the first column in tables, too. */
    private static Set<String> names(List<Path> files) throws IOException {
        var names = new HashSet<String>(Set.of("food"));
        for (Path file : files) {
            NO_NAME.splitAsStream(Files.readString(file)).forEach(names::add);
        }
        return names;
    }
}
