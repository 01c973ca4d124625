package batchwright.files;

import batchwright.text.Problem;
import batchwright.text.SourceFile;
import batchwright.text.Span;
import java.util.List;
import java.util.Optional;

/** Opens files; what cannot be opened or decoded becomes a problem. */
record Sources(DataFiles files, Problems problems) {
    /** A file that must be there. */
    Optional<SourceFile> need(String path, String expected) {
        Optional<Read<SourceFile>> read = files.read(path);
        if (read.isEmpty()) {
            var missing = new SourceFile(files.shown(path), List.of());
            problems.add(Problem.error(Span.whole(missing), "there is no such file", expected));
        }
        return read.flatMap(this::opened);
    }

    /** A file that may be there. */
    Optional<SourceFile> find(String path) {
        return files.read(path).flatMap(this::opened);
    }

    private Optional<SourceFile> opened(Read<SourceFile> read) {
        read.problems().forEach(problems::add);
        return read.value();
    }
}
