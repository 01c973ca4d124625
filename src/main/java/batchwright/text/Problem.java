package batchwright.text;

import java.util.Optional;

/**
 * Something wrong in a user's file.
 *
 * @param at where
 * @param severity whether it stops the program
 * @param wrong what is wrong, one sentence without a full stop
 * @param expected what was expected; may be empty
 * @param nearest the nearest valid name, if one is near
 * @param count of how many problems it tells: 1, or those that a long list leaves out
 */
public record Problem(Span at, Severity severity, String wrong, String expected, Optional<String> nearest, int count) {
    private static final int LONGEST = 1000;

    /** Whether a problem stops the program. */
    public enum Severity {
        ERROR,
        WARNING
    }

    public static Problem error(Span at, String wrong, String expected) {
        return new Problem(at, Severity.ERROR, wrong, expected, Optional.empty(), 1);
    }

    public static Problem warning(Span at, String wrong, String expected) {
        return new Problem(at, Severity.WARNING, wrong, expected, Optional.empty(), 1);
    }

    /** What a long list leaves out. */
    public static Problem more(SourceFile file, Severity severity, int count) {
        String what = severity == Severity.ERROR ? "error" : "warning";
        String wrong = "%s more %s%s in this file".formatted(count, what, count == 1 ? "" : "s");
        return new Problem(Span.whole(file), severity, wrong, "", Optional.empty(), count);
    }

    public boolean isError() {
        return severity == Severity.ERROR;
    }

    /** The same problem with the name that was most likely meant. */
    public Problem near(Optional<String> name) {
        return new Problem(at, severity, wrong, expected, name, count);
    }

    /** The place, the user's own line with a caret, what was expected and the nearest name. */
    public String render() {
        var out = new StringBuilder();
        out.append(Echo.line(at.file().path()));
        if (at.line() > 0) {
            out.append(':').append(at.line()).append(':').append(at.column());
        }
        out.append(isError() ? ": error: " : ": warning: ")
                .append(sentence(wrong))
                .append('\n');
        if (at.line() > 0) {
            new Excerpt(at).appendTo(out);
        }
        if (!expected.isEmpty()) {
            out.append(sentence(expected));
            nearest.ifPresent(
                    name -> out.append("; nearest: \"").append(Echo.line(name)).append('"'));
            out.append('\n');
        } else {
            nearest.ifPresent(
                    name -> out.append("nearest: \"").append(Echo.line(name)).append("\"\n"));
        }
        return out.toString();
    }

    private static String sentence(String text) {
        return Echo.line(Echo.shortened(LONGEST, text));
    }
}
