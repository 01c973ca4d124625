package batchwright.app.newdish;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a step that somebody typed says of heat and time: "Roast at 200 C for 35 minutes" takes the oven.
 *
 * @param appliance as a dish writes it; empty for hands and time alone
 * @param inPan whether it is done a load at a time
 */
record StepWords(String appliance, boolean inPan, OptionalInt minutes, OptionalInt celsius) {
    private static final String MINUTE = "(\\d{1,3})\\s*(?:min|minutes?|mins)\\b";
    private static final Pattern MINUTES = Pattern.compile(MINUTE);
    private static final Pattern HOURS = Pattern.compile("(\\d{1,2}(?:\\.\\d)?)\\s*(?:h|hours?)\\b");
    private static final Pattern DEGREES = Pattern.compile("(\\d{2,3})\\s*(?:°|degrees)?\\s*([cf])\\b");
    private static final Pattern PAN = Pattern.compile("\\b(?:fry|stir-fry|brown|sear|saute|sauté)\\b");
    private static final Map<String, Pattern> APPLIANCES = appliances();
    private static final int LEAST_OVEN_C = 80;
    private static final int MOST_OVEN_C = 300;
    private static final int MINUTES_PER_HOUR = 60;
    private static final double FREEZING_F = 32;
    private static final double F_PER_C = 1.8;

    private static Map<String, Pattern> appliances() {
        var words = new LinkedHashMap<String, Pattern>();
        words.put("slow_cooker", Pattern.compile("slow cooker"));
        words.put("rice_cooker", Pattern.compile("rice cooker"));
        words.put("pressure_cooker", Pattern.compile("pressure cooker"));
        words.put("air_fryer", Pattern.compile("air[ -]fry"));
        words.put("microwave", Pattern.compile("microwave"));
        words.put("oven", Pattern.compile("\\b(?:oven|bake|roast|grill|broil)\\b"));
        words.put(
                "burner",
                Pattern.compile(
                        "\\b(?:boil|simmer|fry|stir-fry|brown|sear|saute|sauté|soften|cook|heat|poach|steam|toast|melt"
                                + "|reduce)\\b"));
        return words;
    }

    static StepWords of(String typed) {
        String text = typed.toLowerCase(Locale.ROOT);
        String appliance = APPLIANCES.entrySet().stream()
                .filter(entry -> entry.getValue().matcher(text).find())
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse("");
        return new StepWords(
                appliance, appliance.equals("burner") && PAN.matcher(text).find(), minutes(text), celsius(text));
    }

    boolean heats() {
        return !appliance.isEmpty();
    }

    private static OptionalInt minutes(String text) {
        Matcher minutes = MINUTES.matcher(text);
        Matcher hours = HOURS.matcher(text);
        int sum = 0;
        while (minutes.find()) {
            sum += Integer.parseInt(minutes.group(1));
        }
        while (hours.find()) {
            sum += (int) Math.round(Double.parseDouble(hours.group(1)) * MINUTES_PER_HOUR);
        }
        return sum == 0 ? OptionalInt.empty() : OptionalInt.of(sum);
    }

    private static OptionalInt celsius(String text) {
        Matcher degrees = DEGREES.matcher(text);
        while (degrees.find()) {
            int figure = Integer.parseInt(degrees.group(1));
            int celsius = degrees.group(2).equals("c") ? figure : (int) Math.round((figure - FREEZING_F) / F_PER_C);
            if (celsius >= LEAST_OVEN_C && celsius <= MOST_OVEN_C) {
                return OptionalInt.of(celsius);
            }
        }
        return OptionalInt.empty();
    }
}
