package batchwright.files.disk;

import batchwright.text.SourceFile;
import java.util.List;

/**
 * The one way to the user's files, wherever they live: in a folder, or the starter files inside the jar. Paths use forward slashes.
 */
public interface DataFiles {
    /**
     * What a folder holds.
     *
     * @param path such as foods/dishes/chili.yaml
     * @param isFolder else it is a file, or should be one
     */
    record Entry(String path, boolean isFolder) {
        /** Without its folder. */
        public String name() {
            return path.substring(path.lastIndexOf('/') + 1);
        }
    }

    /** The file at a path such as foods/catalogue.csv as text. */
    Found<SourceFile> read(String path);

    /** What is directly in a folder such as foods/dishes, in alphabetical order; hidden files, which begin with a point, are left out. */
    Found<List<Entry>> list(String folder);

    /** A path as the user should see it, also when there is no such file. */
    default String shown(String path) {
        return path;
    }
}
