package batchwright.files.value;

import batchwright.text.SourceFile;
import batchwright.text.Written;
import java.util.Optional;
import java.util.regex.Pattern;

/** Short names that other files refer to: lower case, so that they are typed alike everywhere. */
public final class Ids {
    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9_]{0,39}");
    private static final Pattern EATER = Pattern.compile("[a-z][a-z0-9_-]{0,39}");

    private Ids() {}

    /** Of a food or a dish. */
    public static Optional<String> id(Written written, Problems problems) {
        return checked(written, ID, "a letter, then letters, digits and _, all lower case: rolled_oats", problems);
    }

    public static Optional<String> eater(Written written, Problems problems) {
        return checked(
                written, EATER, "a letter, then letters, digits, _ and -, all lower case: lifter-gaining", problems);
    }

    /** Whether a text can be the short name of an eater. */
    public static boolean isEater(String text) {
        return EATER.matcher(text).matches();
    }

    /** The id inside a file must be the name of the file, so that either finds the other. */
    public static void sameAsFile(Written id, Problems problems) {
        SourceFile file = id.at().file();
        String name = file.path().substring(file.path().lastIndexOf('/') + 1).replaceFirst("\\.yaml$", "");
        if (!name.equals(id.text())) {
            problems.error(
                    id,
                    "%s is not the name of the file".formatted(id.quoted()),
                    "expected %s, or the file renamed to %s.yaml".formatted(name, id.text()));
        }
    }

    private static Optional<String> checked(Written written, Pattern pattern, String expected, Problems problems) {
        if (pattern.matcher(written.text()).matches()) {
            return Optional.of(written.text());
        }
        problems.error(written, written.quoted() + " cannot be a short name", "expected " + expected);
        return Optional.empty();
    }
}
