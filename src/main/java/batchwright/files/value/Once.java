package batchwright.files.value;

import batchwright.text.Span;
import batchwright.text.Written;
import java.util.HashMap;
import java.util.Map;

/** Sees that something stands in the files only once, and names the first place otherwise. */
public final class Once {
    private final Map<String, Span> places = new HashMap<>();
    private final Problems problems;

    public Once(Problems problems) {
        this.problems = problems;
    }

    /** @param what such as: rolled_oats, or: cup of rolled_oats */
    public boolean isNew(String what, Written written) {
        Span first = places.putIfAbsent(what, written.at());
        if (first != null) {
            problems.error(
                    written,
                    what + " is there twice",
                    "expected it once; the first is at %s:%s"
                            .formatted(first.file().path(), first.line()));
        }
        return first == null;
    }
}
