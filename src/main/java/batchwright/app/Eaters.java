package batchwright.app;

import batchwright.files.DataFiles;
import batchwright.files.EaterReader;
import batchwright.files.FolderFiles;
import batchwright.food.Kitchen;
import batchwright.person.Eater;
import batchwright.text.NearestName;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds eaters as a command names them: a profile's path, or its short id in profiles/. */
final class Eaters {
    private static final String FOLDER = "profiles";
    private static final String ENDING = ".yaml";
    private final Workspace workspace;
    private final Kitchen kitchen;

    Eaters(Workspace workspace, Kitchen kitchen) {
        this.workspace = workspace;
        this.kitchen = kitchen;
    }

    /** Eaters in the order they are named, each once. */
    List<Eater> all(List<String> names) {
        Map<String, Eater> byId = new LinkedHashMap<>();
        for (String name : names) {
            Eater eater = one(name);
            if (byId.putIfAbsent(eater.id(), eater) != null) {
                throw Refused.because(
                        "the eater " + eater.id() + " is named twice", "Name each eater once: they share the batches.");
            }
        }
        return List.copyOf(byId.values());
    }

    Eater one(String name) {
        Optional<Path> file = file(name);
        if (file.isPresent()) {
            if (Files.isDirectory(file.get())) {
                throw Refused.because(name + " is a folder", "Name one profile in it, such as " + example() + ".");
            }
            DataFiles onDisk = new FolderFiles(workspace.here());
            return workspace.value(EaterReader.read(onDisk, name, Optional.of(kitchen)));
        }
        String path = looksLikePath(name) ? name.replace('\\', '/') : FOLDER + "/" + name + ENDING;
        if (!ids().contains(idOf(path)) || !path.equals(FOLDER + "/" + idOf(path) + ENDING)) {
            throw unknown(name, path);
        }
        return workspace.value(EaterReader.read(workspace.files(), path, Optional.of(kitchen)));
    }

    /** The file or folder itself, when the name is the path of one. */
    private Optional<Path> file(String name) {
        if (!looksLikePath(name)) {
            return Optional.empty();
        }
        try {
            return Optional.of(workspace.here().resolve(name)).filter(Files::exists);
        } catch (InvalidPathException notAPath) {
            return Optional.empty();
        }
    }

    private static boolean looksLikePath(String name) {
        return name.contains("/")
                || name.contains("\\")
                || name.endsWith(ENDING)
                || name.endsWith(".yml")
                || name.equals(".");
    }

    private static String idOf(String path) {
        String file = path.substring(path.lastIndexOf('/') + 1);
        return file.endsWith(ENDING) ? file.substring(0, file.length() - ENDING.length()) : file;
    }

    private List<String> ids() {
        return workspace.files().list(FOLDER).stream()
                .filter(path -> path.endsWith(ENDING))
                .map(Eaters::idOf)
                .toList();
    }

    private String example() {
        return ids().stream().findFirst().map(id -> FOLDER + "/" + id + ENDING).orElse("profiles/me.yaml");
    }

    private Refused unknown(String name, String path) {
        String dish = name.replace(",", "");
        if (kitchen.dishes().containsKey(dish)) {
            return Refused.because(
                    "\"" + dish + "\" is a dish and no eater",
                    "Name a profile. In --cook, dishes stand with commas and without blanks: --cook DISH," + dish
                            + ".");
        }
        String wrong = looksLikePath(name)
                ? "there is no file " + name
                : "there is no eater called \"" + name + "\" in profiles/";
        String nearest = NearestName.of(idOf(path), ids())
                .map(id -> "Nearest: " + id + ".")
                .orElseGet(() -> ids().isEmpty()
                        ? "Write a profile into profiles/; \"init DIR\" writes starter profiles."
                        : "Known: " + String.join(", ", ids()) + ".");
        return Refused.because(wrong, nearest);
    }
}
