package batchwright.files;

import batchwright.text.SourceFile;
import java.util.List;
import java.util.Optional;

/** The user's files, wherever they live: in a folder, or the starter files inside the jar. Paths use forward slashes. */
public interface DataFiles {
    /** The file at a path such as foods/catalogue.csv, or why it cannot be read as text; empty when there is none. */
    Optional<Read<SourceFile>> read(String path);

    /** Paths of the files directly in a folder such as foods/dishes, in alphabetical order. */
    List<String> list(String folder);

    /** Paths of the folders directly in a folder, in alphabetical order, where the user may have made some. */
    default List<String> folders(String folder) {
        return List.of();
    }

    /** A path as the user should see it, also when there is no such file. */
    default String shown(String path) {
        return path;
    }
}
