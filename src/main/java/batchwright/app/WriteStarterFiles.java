package batchwright.app;

import batchwright.files.disk.StarterFiles;
import batchwright.write.CannotWrite;
import batchwright.write.WholeFolder;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes the starter files out, to be edited. Never overwrites: when one of them is there and differs, nothing is written. */
public final class WriteStarterFiles {
    private final StarterFiles starter = new StarterFiles();

    /**
     * @return the paths that were written, inside the folder; not those that were already there and right
     * @throws Refused when a file is in the way or cannot be written
     */
    public List<String> into(Path folder) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        starter.paths().forEach(path -> files.put(path, starter.bytes(path).orElseThrow()));
        try {
            return new WholeFolder(folder, files).write();
        } catch (CannotWrite cannot) {
            throw Refused.because(cannot.wrong(), cannot.cure());
        }
    }
}
