package batchwright.report.labels;

import java.util.ArrayList;
import java.util.List;

/** Breaks a text into lines: between words, and inside a word only when it is wider than a line. */
public final class LinesOfType {
    private LinesOfType() {}

    /** @param most widest line, as a multiple of the height of the type (em) */
    public static List<String> of(String text, double most, boolean bold, Typeface face) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (face.ems(longer, bold) > most && !line.isEmpty()) {
                lines.add(line);
                longer = word;
            }
            line = broken(longer, most, bold, face, lines);
        }
        lines.add(line);
        return lines;
    }

    /** What is left of a word after the lines that it fills. */
    private static String broken(String word, double most, boolean bold, Typeface face, List<String> lines) {
        String rest = word;
        while (face.ems(rest, bold) > most && rest.codePointCount(0, rest.length()) > 1) {
            int letters = rest.codePointCount(0, rest.length()) - 1;
            while (letters > 1 && face.ems(start(rest, letters), bold) > most) {
                letters--;
            }
            lines.add(start(rest, letters));
            rest = rest.substring(rest.offsetByCodePoints(0, letters));
        }
        return rest;
    }

    private static String start(String text, int letters) {
        return text.substring(0, text.offsetByCodePoints(0, letters));
    }
}
