package batchwright.report.export;

import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

/**
 * Lines of an iCalendar file (RFC 5545, 3.1): they end with CR LF, and one of more than 75 octets goes on in the next after a
 * blank, never inside a character.
 */
final class ContentLines {
    private static final int MOST_OCTETS = 75;
    private static final String END = "\r\n";
    private static final Pattern LINE_BREAK = Pattern.compile("\r\n|\r|\n");
    /** What no line may hold (RFC 5545, 3.1: CONTROL), and the rest of what a terminal would obey. */
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cc}&&[^\t]]");

    private final StringBuilder out = new StringBuilder();

    /** A value that is no free text, such as a date. */
    ContentLines add(String name, String value) {
        fold(name + ":" + value);
        return this;
    }

    /** Free text (RFC 5545, 3.3.11). */
    ContentLines text(String name, String words) {
        return add(name, escaped(words));
    }

    private static String escaped(String words) {
        String oneLine = LINE_BREAK
                .matcher(words.replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,"))
                .replaceAll("\\\\n");
        return CONTROL.matcher(oneLine).replaceAll("?");
    }

    private void fold(String line) {
        int octets = 0;
        for (int i = 0; i < line.length(); ) {
            String character = Character.toString(line.codePointAt(i));
            int more = character.getBytes(StandardCharsets.UTF_8).length;
            if (octets + more > MOST_OCTETS) {
                out.append(END).append(' ');
                octets = 1;
            }
            out.append(character);
            octets += more;
            i += character.length();
        }
        out.append(END);
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
