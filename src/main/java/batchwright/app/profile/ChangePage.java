package batchwright.app.profile;

import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.files.KitchenReader;
import batchwright.files.disk.DataFiles;
import batchwright.files.disk.FolderFiles;
import batchwright.files.disk.WithChange;
import batchwright.files.page.EditedPage;
import batchwright.files.profile.EaterReader;
import batchwright.food.Kitchen;
import batchwright.text.SourceFile;
import batchwright.write.CannotWrite;
import batchwright.write.EditedFile;
import batchwright.write.NewFile;
import batchwright.write.OwnFile;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * Changes lines of a profile, or of the page of the kitchen, because the user asked for just that: comments, order and every other line stay as
 * they are. The page as it would be is read by the usual reader first. Where a page is written in a way that cannot surely be changed, the
 * lines go into a file beside it.
 */
public final class ChangePage {
    private static final String KITCHEN = "foods/kitchen.yaml";
    private static final String HEAD =
            "# Lines that were wanted and could not surely be put in: do it by hand, then delete this file.\n";

    private final Workspace workspace;

    public ChangePage(Workspace workspace) {
        this.workspace = workspace;
    }

    /**
     * Where the lines went.
     *
     * @param path as the user knows it
     * @param inPlace whether they are in the page itself, not beside it
     */
    public record Went(String path, boolean inPlace) {}

    /**
     * Of the profile of an eater.
     *
     * @throws Refused when it would not be right with them, or cannot be written; then it is as it was
     */
    public Went profile(String eater, List<KeyChange> changes) {
        if (!workspace
                .source()
                .eaters()
                .match(List::<String>of, ids -> ids, problem -> List.of())
                .contains(eater)) {
            throw Refused.because("there is no eater called \"" + eater + "\"", "Name one of the profiles.");
        }
        String path = profilePath(eater);
        Kitchen kitchen = workspace.quietly().kitchen();
        return change(
                path,
                "profiles/" + eater + "-changes.txt",
                changes,
                files -> workspace.quietly().value(EaterReader.read(files, path, Optional.of(kitchen))));
    }

    /**
     * Of the page of the kitchen, which is made where there is none.
     *
     * @throws Refused when it would not be right with them, or cannot be written; then it is as it was
     */
    public Went kitchen(List<KeyChange> changes) {
        return change(
                KITCHEN,
                "foods/kitchen-changes.txt",
                changes,
                files -> workspace.quietly().value(KitchenReader.readFoods(files, workspace.cookingDay())));
    }

    /** What a profile says, text by key; of a key of a group group.key. Empty where there is none of one's own. */
    public Map<String, String> writtenOf(String eater) {
        return written(profilePath(eater));
    }

    /** The same of the page of the kitchen. */
    public Map<String, String> writtenOfKitchen() {
        return written(KITCHEN);
    }

    private Map<String, String> written(String path) {
        return workspace
                .source()
                .folder()
                .map(FolderFiles::new)
                .flatMap(folder ->
                        folder.read(path).match(Optional::<SourceFile>empty, Optional::of, no -> Optional.empty()))
                .map(file -> new EditedPage(String.join("\n", file.lines()) + "\n").says())
                .orElse(Map.of());
    }

    private static String profilePath(String eater) {
        return "profiles/" + eater + ".yaml";
    }

    private Went change(String path, String beside, List<KeyChange> changes, Consumer<DataFiles> check) {
        FolderFiles folder = workspace.ownFolder("and the starter files stay as they are");
        try {
            if (!Files.exists(folder.path(path))) {
                String text = edited("", changes).orElseThrow();
                check.accept(new WithChange(folder, path, SourceFile.of(folder.shown(path), text)));
                new NewFile(folder.path(path)).write(text);
                return new Went(folder.shown(path), true);
            }
            EditedFile file = EditedFile.of(folder.path(path));
            Optional<String> text = edited(file.text(), changes);
            if (text.isEmpty()) {
                String lines =
                        changes.stream().map(change -> change.line() + "\n").collect(Collectors.joining());
                new OwnFile(folder.path(beside), HEAD).write(lines);
                return new Went(folder.shown(beside), false);
            }
            check.accept(new WithChange(folder, path, SourceFile.of(folder.shown(path), text.get())));
            file.replace(text.get());
            return new Went(folder.shown(path), true);
        } catch (CannotWrite cannot) {
            throw Refused.because(cannot.wrong(), cannot.cure());
        }
    }

    private static Optional<String> edited(String page, List<KeyChange> changes) {
        Optional<String> text = Optional.of(page);
        for (KeyChange change : changes) {
            text = text.flatMap(change::in);
        }
        return text;
    }
}
