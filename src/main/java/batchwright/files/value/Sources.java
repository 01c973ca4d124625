package batchwright.files.value;

import batchwright.files.disk.DataFiles;
import batchwright.text.Problem;
import batchwright.text.SourceFile;
import batchwright.text.Span;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Opens files and folders; what cannot be opened or decoded becomes a problem. */
public final class Sources {
    private final DataFiles files;
    private final Problems problems;
    private final Map<String, List<DataFiles.Entry>> listed = new HashMap<>();

    public Sources(DataFiles files, Problems problems) {
        this.files = files;
        this.problems = problems;
    }

    /** A file that must be there. */
    public Optional<SourceFile> need(String path, String expected) {
        return files.read(path)
                .match(
                        () -> {
                            var missing = new SourceFile(files.shown(path), List.of());
                            problems.error(Span.whole(missing), "there is no such file", expected);
                            return Optional.<SourceFile>empty();
                        },
                        Optional::of,
                        this::unreadable);
    }

    /** A file that may be there. */
    public Optional<SourceFile> find(String path) {
        return files.read(path).match(Optional::<SourceFile>empty, Optional::of, this::unreadable);
    }

    private Optional<SourceFile> unreadable(Problem problem) {
        problems.add(problem);
        return Optional.empty();
    }

    /** What is in a folder; nothing when it is not there. That it cannot be read is told once, however often it is asked for. */
    public List<DataFiles.Entry> list(String folder) {
        return listed.computeIfAbsent(
                folder,
                f -> files.list(f).match(List::<DataFiles.Entry>of, entries -> entries, problem -> {
                    problems.add(problem);
                    return List.of();
                }));
    }

    public String shown(String path) {
        return files.shown(path);
    }
}
