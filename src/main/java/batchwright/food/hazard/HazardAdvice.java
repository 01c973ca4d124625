package batchwright.food.hazard;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What an authority says.
 *
 * @param says for people; words in {} are filled in
 * @param source who says so
 * @param mark how sure: seen, memory, common practice, arith, choice
 */
public record HazardAdvice(String says, String source, String mark) {
    private static final Pattern BLANK = Pattern.compile("\\{([a-z]+)}");

    /** With the blanks filled in; one without a value is a mistake of the program. */
    public String with(Map<String, String> values) {
        return BLANK.matcher(says).replaceAll(blank -> {
            String value = values.get(blank.group(1));
            if (value == null) {
                throw new IllegalArgumentException("{" + blank.group(1) + "} has no value in \"" + says + "\".");
            }
            return Matcher.quoteReplacement(value);
        });
    }
}
