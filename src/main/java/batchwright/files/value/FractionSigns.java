package batchwright.files.value;

import java.util.Map;
import java.util.regex.Pattern;

/** Signs that say a fraction in one letter, as recipes print them: 1\u00bd is 1 1/2. */
public final class FractionSigns {
    private static final Map<String, String> SIGNS = Map.ofEntries(
            Map.entry("\u00bd", "1/2"),
            Map.entry("\u00bc", "1/4"),
            Map.entry("\u00be", "3/4"),
            Map.entry("\u2153", "1/3"),
            Map.entry("\u2154", "2/3"),
            Map.entry("\u215b", "1/8"),
            Map.entry("\u215c", "3/8"),
            Map.entry("\u215d", "5/8"),
            Map.entry("\u215e", "7/8"));
    private static final Pattern SIGN = Pattern.compile("[\u00bc-\u00be\u2153\u2154\u215b-\u215e]");

    private FractionSigns() {}

    /** The text with every sign as digits and a stroke, a blank before it. */
    public static String spelledOut(String text) {
        return SIGN.matcher(text)
                .replaceAll(sign -> " " + SIGNS.get(sign.group()))
                .strip();
    }
}
