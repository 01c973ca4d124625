package batchwright.files.foods;

import batchwright.files.disk.DataFiles;
import batchwright.files.table.CsvLines;
import batchwright.files.value.Problems;
import batchwright.text.SourceFile;
import batchwright.text.Written;
import java.util.List;
import java.util.Optional;

/** The columns of the user's catalogue in their own order, for a line that is to be added to it. */
public final class CatalogueColumns {
    private CatalogueColumns() {}

    /** As the header names them; the usual ones when there is no header to be read. */
    public static List<String> of(DataFiles files) {
        return files.read("foods/catalogue.csv")
                .match(Optional::<SourceFile>empty, Optional::of, unreadable -> Optional.<SourceFile>empty())
                .flatMap(file -> CsvLines.of(file, new Problems()).stream().findFirst())
                .map(header -> header.cells().stream().map(Written::text).toList())
                .orElseGet(CatalogueTable::columns);
    }
}
