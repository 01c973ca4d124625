package batchwright.app;

import batchwright.files.StarterFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;

/** Writes the starter files out, to be edited. Never overwrites: when one of them is there already, nothing is written. */
public final class WriteStarterFiles {
    private final StarterFiles starter = new StarterFiles();

    /**
     * @return the paths that were written, inside the folder
     * @throws Refused when a file is in the way or cannot be written
     */
    public List<String> into(Path folder) {
        refuseWhenInTheWay(folder);
        List<String> written = new ArrayList<>();
        for (String path : starter.paths()) {
            try {
                Path file = folder.resolve(path);
                Files.createDirectories(file.getParent());
                Files.write(file, starter.bytes(path).orElseThrow(), StandardOpenOption.CREATE_NEW);
                written.add(path);
            } catch (IOException unwritable) {
                throw Refused.because(
                        "cannot write " + folder.resolve(path),
                        "Name a folder that you may write to. "
                                + (written.isEmpty()
                                        ? "Nothing was written."
                                        : "Written before: " + String.join(", ", written)));
            }
        }
        return written;
    }

    private void refuseWhenInTheWay(Path folder) {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw Refused.because(
                    folder + " is a file", "Name a folder; it is made when it is not there. Nothing was written.");
        }
        List<String> there = starter.paths().stream()
                .filter(p -> Files.exists(folder.resolve(p)))
                .toList();
        if (!there.isEmpty()) {
            throw Refused.because(
                    "these files are there already: " + String.join(", ", there),
                    "Nothing was written. Name another folder, or move them away first.");
        }
    }
}
