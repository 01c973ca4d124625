package batchwright.text;

/** The user's own line with carets under the marked text; a long line is cut around the mark. */
final class Excerpt {
    private static final int WIDTH = 72;
    private static final int BEFORE_MARK = 32;
    private static final int QUOTED = 40;
    private static final String CUT = "...";

    private final Span at;

    Excerpt(Span at) {
        this.at = at;
    }

    void appendTo(StringBuilder out) {
        String line = printable(at.file().line(at.line()));
        int start = Math.min(at.column() - 1, line.length());
        int end = Math.max(start + 1, Math.min(line.length(), start + at.length()));
        int from = line.length() <= WIDTH ? 0 : Math.max(0, start - BEFORE_MARK);
        int to = Math.min(line.length(), from + WIDTH);
        String head = from > 0 ? CUT : "";
        String tail = to < line.length() ? CUT : "";
        String number = Integer.toString(at.line());

        out.append(number).append(" | ");
        out.append(head).append(line, from, to).append(tail).append('\n');
        out.append(" ".repeat(number.length())).append(" | ");
        out.append(" ".repeat(head.length() + start - from));
        out.append("^".repeat(Math.max(1, Math.min(end, Math.max(to, start + 1)) - start)));
        out.append('\n');
    }

    static String quoted(String text) {
        String shown = printable(text);
        return '"' + (shown.length() <= QUOTED ? shown : shown.substring(0, QUOTED) + CUT) + '"';
    }

    /** A tab becomes one blank, so that carets stay below their text; what a terminal would obey becomes a question mark. */
    private static String printable(String line) {
        var out = new StringBuilder(line.length());
        line.chars().forEach(c -> out.append(c == '\t' ? ' ' : isControl(c) ? '?' : (char) c));
        return out.toString();
    }

    /** Control characters, and marks that turn the direction of writing and so can hide what a line says. */
    private static boolean isControl(int c) {
        return Character.isISOControl(c) || (c >= 0x2028 && c <= 0x202e) || (c >= 0x2066 && c <= 0x2069) || c == 0xfeff;
    }
}
