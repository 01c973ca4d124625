package batchwright.spark;

/** What is at a place that is read or written, by its name. */
enum Place {
    /** A file, or a folder of files, with a JSON object on each line. */
    LINES,
    /** The same with a table; its first line names the columns. */
    CSV,
    PARQUET,
    /** A table that the session's catalogue knows. */
    TABLE;

    private static final String TABLE_PREFIX = "table:";

    static Place of(String name) {
        if (name.startsWith(TABLE_PREFIX)) {
            return TABLE;
        }
        if (name.endsWith(".parquet")) {
            return PARQUET;
        }
        return name.endsWith(".csv") ? CSV : LINES;
    }

    /** The name of a {@link #TABLE} in its catalogue. */
    static String table(String name) {
        return name.substring(TABLE_PREFIX.length());
    }
}
