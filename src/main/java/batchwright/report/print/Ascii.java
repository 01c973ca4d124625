package batchwright.report.print;

import java.text.Normalizer;
import java.util.regex.Pattern;

/**
 * Text for a screen that can show nothing but ASCII. The program's own words are ASCII anyway; names from files may not be: accents
 * are left out, and what is left becomes a question mark.
 */
public final class Ascii {
    private static final Pattern UNSEEN = Pattern.compile("[\\p{M}\\p{Cf}]+");
    private static final Pattern OTHER = Pattern.compile("[^\\x00-\\x7F]");

    private Ascii() {}

    public static String of(String text) {
        String apart = Normalizer.normalize(text, Normalizer.Form.NFD);
        return OTHER.matcher(UNSEEN.matcher(apart).replaceAll("")).replaceAll("?");
    }
}
