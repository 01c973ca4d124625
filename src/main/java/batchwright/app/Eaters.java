package batchwright.app;

import batchwright.app.book.WeighingsInBook;
import batchwright.files.disk.FolderFiles;
import batchwright.files.disk.Found;
import batchwright.files.profile.EaterReader;
import batchwright.food.Kitchen;
import batchwright.needs.learning.TargetStep;
import batchwright.person.Eater;
import batchwright.text.NearestName;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds eaters as a command names them: a profile's path, or its short id in profiles/. */
public final class Eaters {
    private final Workspace workspace;
    private final Kitchen kitchen;

    public Eaters(Workspace workspace, Kitchen kitchen) {
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

    /** With the activity that weighings came to, where a step was adopted. */
    Eater one(String name) {
        Eater eater = asWritten(name);
        List<TargetStep> steps = new WeighingsInBook(workspace).adopted(eater.id());
        return steps.isEmpty() ? eater : steps.get(steps.size() - 1).in(eater);
    }

    /**
     * As the profile says.
     *
     * @throws Refused when there is no such profile, or it has an error
     */
    public Eater asWritten(String name) {
        var onDisk = new FolderFiles(workspace.here());
        Found<Boolean> folder = looksLikePath(name) ? onDisk.isFolder(name) : new Found.Absent<>();
        return folder.match(
                () -> known(name),
                isFolder -> {
                    if (isFolder) {
                        throw Refused.because(
                                name + " is a folder", "Name one profile in it, such as " + example() + ".");
                    }
                    return workspace.value(EaterReader.read(onDisk, name, Optional.of(kitchen)));
                },
                problem -> {
                    throw Refused.by(List.of(problem));
                });
    }

    /** One of those in profiles/. */
    private Eater known(String name) {
        String path = looksLikePath(name) ? name.replace('\\', '/') : KitchenInFiles.pathOf(name);
        if (!ids().contains(KitchenInFiles.idOf(path))
                || !path.equals(KitchenInFiles.pathOf(KitchenInFiles.idOf(path)))) {
            throw unknown(name, path);
        }
        return workspace.value(workspace.source().eater(KitchenInFiles.idOf(path), Optional.of(kitchen)));
    }

    private static boolean looksLikePath(String name) {
        return name.contains("/")
                || name.contains("\\")
                || name.endsWith(KitchenInFiles.ENDING)
                || name.endsWith(".yml")
                || name.equals(".");
    }

    /**
     * The short names of all that have a profile, in alphabetical order.
     *
     * @throws Refused when that cannot be found out
     */
    public static List<String> ids(Workspace workspace) {
        return workspace.source().eaters().match(List::of, ids -> ids, problem -> {
            throw Refused.by(List.of(problem));
        });
    }

    private List<String> ids() {
        return ids(workspace);
    }

    /** How the profile calls an eater; the short name where it cannot be read. */
    public String nameOf(String id) {
        return readable(id).map(Eater::name).orElse(id);
    }

    /** As the profile says; empty where it cannot be read. */
    public Optional<Eater> readable(String id) {
        return workspace.source().eater(id, Optional.of(kitchen)).value();
    }

    private String example() {
        return ids().stream().findFirst().map(id -> KitchenInFiles.pathOf(id)).orElse("profiles/me.yaml");
    }

    private Refused unknown(String name, String path) {
        String dish = name.replace(",", "");
        if (kitchen.dish(dish).isPresent()) {
            return Refused.because(
                    "\"" + dish + "\" is a dish and no eater",
                    "Name a profile. Dishes stand with commas and without blanks: DISH," + dish + ".");
        }
        String wrong = looksLikePath(name)
                ? "there is no file " + name
                : "there is no eater called \"" + name + "\" in profiles/";
        String nearest = NearestName.of(KitchenInFiles.idOf(path), ids())
                .map(id -> "Nearest: " + id + ".")
                .orElseGet(() -> ids().isEmpty()
                        ? "Write a profile into profiles/, or begin with the starter files."
                        : "Known: " + String.join(", ", ids()) + ".");
        return Refused.because(wrong, nearest);
    }
}
