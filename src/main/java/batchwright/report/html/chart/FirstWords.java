package batchwright.report.html.chart;

import batchwright.report.labels.Shortened;
import java.util.ArrayList;
import java.util.List;

/** As many words of a text as there is room for; an ellipsis shows that there are more. */
public final class FirstWords {
    private static final String MORE = " …";

    private FirstWords() {}

    public static String of(String text, int width) {
        return of(text, width, 1).get(0);
    }

    /**
     * On lines broken at blanks. A word that is wider than a line is cut.
     *
     * @param width of a line, in characters
     */
    public static List<String> of(String text, int width, int mostLines) {
        List<String> lines = new ArrayList<>();
        String rest = text.strip();
        while (!rest.isEmpty()) {
            boolean last = lines.size() == mostLines - 1;
            if (rest.length() <= width) {
                lines.add(rest);
                break;
            }
            String line = words(rest, last ? width - MORE.length() : width);
            if (last) {
                lines.add(Shortened.to(width - MORE.length(), line.replaceAll("[,.;:]$", "")) + MORE);
                break;
            }
            lines.add(Shortened.to(width, line));
            rest = rest.substring(line.length()).strip();
        }
        return lines;
    }

    /** At least one. */
    private static String words(String text, int width) {
        int end = text.lastIndexOf(' ', width);
        int first = text.indexOf(' ');
        return text.substring(0, end > 0 ? end : first > 0 ? first : text.length());
    }
}
