package batchwright.report.html;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes HTML. Whatever is given as text or as the value of an attribute comes out as text: names come from files, and nothing in
 * them is markup. Tags and attribute names are the program's own.
 */
final class Html {
    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** @param attributes name, value, name, value, ... */
    Html open(String tag, String... attributes) {
        start(tag, attributes);
        open.push(tag);
        return this;
    }

    Html close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    /** Ends a line of the source, where no text would be changed by it. */
    Html line() {
        out.append('\n');
        return this;
    }

    /** A tag that holds nothing and is never closed. */
    Html empty(String tag, String... attributes) {
        start(tag, attributes);
        return this;
    }

    Html text(String text) {
        escape(text);
        return this;
    }

    Html element(String tag, String text, String... attributes) {
        return open(tag, attributes).text(text).close();
    }

    /** A name out of a file. It may run from right to left, which must not turn what stands around it. */
    Html name(String name) {
        return element("bdi", name);
    }

    /** The program's own style sheet, unchanged; it must not hold {@code </}. */
    Html style(String css) {
        if (css.contains("</")) {
            throw new IllegalArgumentException("a style sheet must not end its own element.");
        }
        out.append("<style>").append(css).append("</style>\n");
        return this;
    }

    private void start(String tag, String... attributes) {
        out.append('<').append(tag);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            escape(attributes[i + 1]);
            out.append('"');
        }
        out.append('>');
    }

    private void escape(String text) {
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(isAllowed(c) ? c : '?');
            }
        });
    }

    /** What HTML forbids even as a reference: controls, lone surrogates and points that are no characters. */
    private static boolean isAllowed(int c) {
        return !Character.isISOControl(c)
                && Character.getType(c) != Character.SURROGATE
                && (c & 0xFFFE) != 0xFFFE
                && !(c >= 0xFDD0 && c <= 0xFDEF);
    }

    /** @throws IllegalStateException when an element is still open */
    @Override
    public String toString() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("still open: " + open);
        }
        return out.toString();
    }
}
