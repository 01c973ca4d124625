package batchwright.app.roster;

import batchwright.app.Refused;
import batchwright.write.CannotWrite;
import batchwright.write.Guard;
import batchwright.write.Output;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Predicate;

/** A folder with a page for each pot of a roster. */
public final class RosterPages {
    private final Path folder;
    private final Guard guard;
    private final Predicate<String> isOurs;

    /**
     * @param kitchen the folder that is read, where nothing is written
     * @param replacesAny whether the user said that other files may be replaced
     * @param isOurs whether a file with this beginning is a page that the program made
     * @throws Refused when there is no such folder
     */
    public RosterPages(Path folder, Path kitchen, boolean replacesAny, Predicate<String> isOurs) {
        if (!Files.isDirectory(folder)) {
            throw Refused.because("there is no folder \"" + folder + "\"", "Make it first; the pages go into it.");
        }
        this.folder = folder;
        this.guard = new Guard(Optional.of(kitchen), replacesAny);
        this.isOurs = isOurs;
    }

    /** @throws Refused when it cannot be written or must not be */
    public void write(String name, String html) {
        try {
            new Output(folder.resolve(name), isOurs, guard).write(html);
        } catch (CannotWrite cannot) {
            throw Refused.because(cannot.wrong(), cannot.cure());
        }
    }
}
