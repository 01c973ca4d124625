package batchwright.files.disk;

import batchwright.text.SourceFile;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Files as they will be once one of them is new or has other lines: to be read before anything is written. */
public record WithChange(DataFiles before, String path, SourceFile changed) implements DataFiles {
    @Override
    public Found<SourceFile> read(String wanted) {
        return wanted.equals(path) ? new Found.There<>(changed) : before.read(wanted);
    }

    @Override
    public Found<List<Entry>> list(String folder) {
        return before.list(folder).then(entries -> new Found.There<>(withNew(folder, entries)));
    }

    /** A file that was not there yet is among the others. */
    private List<Entry> withNew(String folder, List<Entry> entries) {
        boolean isNew = path.startsWith(folder + "/")
                && path.indexOf('/', folder.length() + 1) < 0
                && entries.stream().noneMatch(entry -> entry.path().equals(path));
        return isNew
                ? Stream.concat(entries.stream(), Stream.of(new Entry(path, false)))
                        .sorted(Comparator.comparing(Entry::path))
                        .toList()
                : entries;
    }

    @Override
    public String shown(String wanted) {
        return before.shown(wanted);
    }
}
