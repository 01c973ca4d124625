package batchwright.files;

import batchwright.text.SourceFile;
import batchwright.text.Written;

/** One value of a test, as if it stood alone in a file. */
public final class Lines {
    private Lines() {}

    public static Written written(String text) {
        return new Written(text, SourceFile.of("test.yaml", text).span(1, 1, text.length()));
    }
}
