package batchwright.files.page;

/** Where a value that stands on one line ends, before a comment or the end of the line. */
final class ValueEnd {
    private ValueEnd() {}

    /** The index behind its last sign; where it begins when there is none. */
    static int in(String line, int begin) {
        if (begin >= line.length() || line.charAt(begin) == '#') {
            return begin;
        }
        return switch (line.charAt(begin)) {
            case '"', '\'' -> afterQuote(line, begin);
            case '[', '{' -> afterBrackets(line, begin);
            default -> plain(line, begin);
        };
    }

    private static int plain(String line, int begin) {
        int end = begin;
        while (end < line.length() && !(line.charAt(end) == '#' && Character.isWhitespace(line.charAt(end - 1)))) {
            end++;
        }
        return begin + line.substring(begin, end).stripTrailing().length();
    }

    private static int afterQuote(String line, int begin) {
        char quote = line.charAt(begin);
        for (int i = begin + 1; i < line.length(); i++) {
            char sign = line.charAt(i);
            if (quote == '"' && sign == '\\') {
                i++;
            } else if (sign == quote) {
                boolean doubled = quote == '\'' && i + 1 < line.length() && line.charAt(i + 1) == quote;
                if (!doubled) {
                    return i + 1;
                }
                i++;
            }
        }
        return line.length();
    }

    private static int afterBrackets(String line, int begin) {
        int open = 0;
        int i = begin;
        while (i < line.length()) {
            char sign = line.charAt(i);
            if (sign == '"' || sign == '\'') {
                i = afterQuote(line, i);
                continue;
            }
            open += sign == '[' || sign == '{' ? 1 : 0;
            open -= sign == ']' || sign == '}' ? 1 : 0;
            i++;
            if (open == 0) {
                return i;
            }
        }
        return line.length();
    }
}
