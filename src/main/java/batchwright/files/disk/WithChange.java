package batchwright.files.disk;

import batchwright.text.SourceFile;
import java.util.List;

/** Files as they will be once one of them has other lines: to be read before anything is written. */
public record WithChange(DataFiles before, String path, SourceFile changed) implements DataFiles {
    @Override
    public Found<SourceFile> read(String wanted) {
        return wanted.equals(path) ? new Found.There<>(changed) : before.read(wanted);
    }

    @Override
    public Found<List<Entry>> list(String folder) {
        return before.list(folder);
    }

    @Override
    public String shown(String wanted) {
        return before.shown(wanted);
    }
}
