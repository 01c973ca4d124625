package batchwright.files.page;

import batchwright.text.Span;
import batchwright.text.Written;
import java.util.List;

/** A page as its user wrote it: groups of keys, lists and text. Every value is text; what it means is decided by its reader. */
public sealed interface Yaml {
    Span at();

    /** Such as 74 kg, yes or 012: never turned into anything else. */
    record Text(Written written) implements Yaml {
        @Override
        public Span at() {
            return written.at();
        }
    }

    /** Such as [peanut, egg], or lines that begin with a hyphen. */
    record Items(List<Yaml> items, Span at) implements Yaml {}

    /** Lines of the form key: value. */
    record Group(List<Entry> entries, Span at) implements Yaml {}

    /** One line of a group. */
    record Entry(Written key, Yaml value) {}
}
