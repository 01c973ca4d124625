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
        String written = at.file().line(at.line());
        int[] places = new int[written.length() + 1];
        String line = shown(written, places);
        int start = places[Math.min(at.column() - 1, written.length())];
        int end = Math.max(start + 1, places[Math.min(written.length(), at.column() - 1 + at.length())]);
        int from = line.length() <= WIDTH ? 0 : Echo.betweenCharacters(line, Math.max(0, start - BEFORE_MARK));
        int to = Echo.betweenCharacters(line, Math.min(line.length(), from + WIDTH));
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

    /**
     * A tab becomes one blank, what must not be printed an escape.
     *
     * @param places filled with where each character of the line, and its end, come to stand
     */
    private static String shown(String line, int[] places) {
        var out = new StringBuilder(line.length());
        for (int i = 0; i < line.length(); i++) {
            places[i] = out.length();
            boolean second = i > 0 && Character.isSurrogatePair(line.charAt(i - 1), line.charAt(i));
            if (!second) {
                out.append(line.charAt(i) == '\t' ? " " : Echo.character(line, i));
            }
        }
        places[line.length()] = out.length();
        return out.toString();
    }

    static String quoted(String text) {
        String shown = Echo.line(text);
        return '"'
                + (shown.length() <= QUOTED ? shown : shown.substring(0, Echo.betweenCharacters(shown, QUOTED)) + CUT)
                + '"';
    }
}
