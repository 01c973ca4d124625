package batchwright.files.value;

import batchwright.text.Written;
import java.util.Locale;
import java.util.Optional;

/** The words yes and no, in any letter case; nothing else stands for them. */
public final class YesNo {
    private YesNo() {}

    public static Optional<Boolean> read(Written written, Problems problems) {
        String word = written.text().toLowerCase(Locale.ROOT);
        if (word.equals("yes") || word.equals("no")) {
            return Optional.of(word.equals("yes"));
        }
        problems.error(written, written.quoted() + " is neither yes nor no", "expected yes or no");
        return Optional.empty();
    }
}
