package batchwright.files.table;

import batchwright.files.value.Problems;
import batchwright.text.SourceFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * By which rules a table is written: its first line may say {@code # batchwright table 1}. A table that does not say is of version
 * 1. A column more or less is no new version; one whose meaning changes is.
 */
final class TableVersion {
    private static final int NEWEST = 1;
    private static final Pattern LINE = Pattern.compile("\"?#\\s*batchwright table (\\d{1,4})\"?[\\s,;]*");

    private TableVersion() {}

    /** Whether the table needs a newer program, which is then a problem: what its columns mean is not known. */
    static boolean isNewer(SourceFile file, Problems problems) {
        if (file.lines().isEmpty()) {
            return false;
        }
        Matcher version = LINE.matcher(file.line(1));
        if (!version.matches() || Integer.parseInt(version.group(1)) <= NEWEST) {
            return false;
        }
        problems.error(
                file.span(1, version.start(1) + 1, version.group(1).length()),
                "the table is written for a newer version of the program",
                "expected table %s: what the columns of a newer one mean is not known here".formatted(NEWEST));
        return true;
    }
}
