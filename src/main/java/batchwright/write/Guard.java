package batchwright.write;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What a command must not write over.
 *
 * @param kitchen the folder whose foods/ and profiles/ it reads; of other kitchens those that look like them
 * @param replacesAny whether the user said that files of others may be replaced
 */
public record Guard(Optional<Path> kitchen, boolean replacesAny) {
    /** @throws CannotWrite when the file is one of a kitchen */
    void check(Path named, Path real) throws CannotWrite {
        boolean kept = Kitchens.leadsInto(named.toAbsolutePath().normalize())
                || Kitchens.leadsInto(real)
                || kitchen.filter(folder -> Kitchens.holds(folder, real)).isPresent();
        if (kept) {
            throw new CannotWrite(
                    "\"" + named + "\" is among your own files, which are only read",
                    "Name a file outside of foods/ and profiles/.");
        }
    }
}
