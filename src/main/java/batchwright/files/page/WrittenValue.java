package batchwright.files.page;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** How a value is written behind its key so that it is read as the same text. */
public final class WrittenValue {
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9][A-Za-z0-9 .%+/()_-]*");

    private WrittenValue() {}

    /** As it is where that is safe, else in double quotes. */
    public static String of(String text) {
        return PLAIN.matcher(text).matches() && text.equals(text.strip())
                ? text
                : "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    /** [peanut, egg] */
    public static String of(List<String> items) {
        return items.stream().map(WrittenValue::of).collect(Collectors.joining(", ", "[", "]"));
    }
}
