package batchwright.text;

import java.util.Locale;
import java.util.OptionalInt;

/**
 * Text from outside (arguments, names, lines of files) as it may be repeated on a terminal. What a terminal would obey, what turns the
 * direction of writing and what cannot be seen comes out as an escape such as \u202E, so that a text says what it seems to say.
 */
public final class Echo {
    private static final String CUT = " ... ";
    private static final int ZERO_WIDTH_NON_JOINER = 0x200c;
    private static final int ZERO_WIDTH_JOINER = 0x200d;
    private static final int ASCII = 0x80;

    private Echo() {}

    /** Text of one line: line ends are escapes, too. */
    public static String line(String text) {
        return isPlain(text) ? text : escaped(text, false);
    }

    /** Text of any number of lines. */
    public static String lines(String text) {
        return isPlain(text) ? text : escaped(text, true);
    }

    /** Text longer than this loses its middle, so that both its beginning and its end can be read. */
    public static String shortened(int most, String text) {
        if (text.length() <= most) {
            return text;
        }
        int kept = most - CUT.length();
        int head = betweenCharacters(text, kept * 2 / 3);
        int tail = betweenCharacters(text, text.length() - kept / 3);
        return text.substring(0, head) + CUT + text.substring(tail);
    }

    /** Where the first character stands that must not be printed; line ends and tabs may. */
    public static OptionalInt firstHidden(String text) {
        if (isPlain(text)) {
            return OptionalInt.empty();
        }
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            if (isHidden(text, i) && text.charAt(i) != '\n' && text.charAt(i) != '\t') {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /** The character at this place, such as U+202E. */
    public static String codePoint(String text, int at) {
        String code = Integer.toHexString(text.codePointAt(at)).toUpperCase(Locale.ROOT);
        return "U+" + "0".repeat(Math.max(0, 4 - code.length())) + code;
    }

    /** The character at this place as it is shown. */
    static String character(String text, int at) {
        if (!isHidden(text, at)) {
            return Character.toString(text.codePointAt(at));
        }
        String code = codePoint(text, at).substring(2);
        return code.length() == 4 ? "\\u" + code : "\\u{" + code + "}";
    }

    /** This place, or the one before it in the middle of a surrogate pair. */
    static int betweenCharacters(String text, int at) {
        boolean inside =
                at > 0 && at < text.length() && Character.isSurrogatePair(text.charAt(at - 1), text.charAt(at));
        return inside ? at - 1 : at;
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < ' ' || text.charAt(i) >= ASCII - 1) {
                return false;
            }
        }
        return true;
    }

    private static String escaped(String text, boolean keepLineEnds) {
        var out = new StringBuilder(text.length() + 16);
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            out.append(keepLineEnds && text.charAt(i) == '\n' ? "\n" : character(text, i));
        }
        return out.toString();
    }

    private static boolean isHidden(String text, int at) {
        int c = text.codePointAt(at);
        return switch (Character.getType(c)) {
            case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE ->
                true;
            case Character.FORMAT -> !(isJoiner(c) && isInsideWord(text, at));
            default -> (c & 0xfffe) == 0xfffe;
        };
    }

    private static boolean isJoiner(int c) {
        return c == ZERO_WIDTH_NON_JOINER || c == ZERO_WIDTH_JOINER;
    }

    /** Persian and Indic words and many emoji are written with joiners between their letters. */
    private static boolean isInsideWord(String text, int at) {
        return at > 0
                && at + 1 < text.length()
                && text.charAt(at - 1) >= ASCII
                && text.charAt(at + 1) >= ASCII
                && !isJoiner(text.charAt(at - 1))
                && !isJoiner(text.charAt(at + 1));
    }
}
