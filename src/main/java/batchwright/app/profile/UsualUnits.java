package batchwright.app.profile;

import batchwright.app.ProfileAnswers;
import batchwright.app.ProfileQuestion;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The units in which somebody measures, as the height tells them; a bare number is in these. */
public final class UsualUnits {
    private static final Pattern BARE_NUMBER = Pattern.compile("[0-9]+([.][0-9]+)?");
    /** 5 11, 5'11", 5ft 11 */
    private static final Pattern FEET = Pattern.compile("([3-8])\\s*(?:ft|'|\\s)\\s*([0-9]{1,2})\\s*(?:in|\")?");

    private final ProfileAnswers answers;

    public UsualUnits(ProfileAnswers answers) {
        this.answers = answers;
    }

    /** Whether somebody who says the height like that measures in pounds. */
    public boolean isUs() {
        String height = answers.all().getOrDefault(ProfileQuestion.HEIGHT, "");
        return height.contains("ft") || height.contains("in");
    }

    /** An example in the units of the user, or in both while they are not known; may be empty. */
    public String hint(ProfileQuestion question) {
        String metric = question.example().metric();
        String us = question.example().us();
        if (metric.isEmpty()) {
            return "";
        }
        if (metric.equals(us) || answers.has(ProfileQuestion.HEIGHT)) {
            return "Such as " + question.example().of(isUs()) + ".";
        }
        return "Such as " + metric + ", or " + us + ".";
    }

    /** The answer with its unit, as a profile has it. */
    public String withUnit(ProfileQuestion question, String answer) {
        boolean height = question.key().equals(ProfileQuestion.HEIGHT);
        Matcher feet = FEET.matcher(answer);
        if (height && feet.matches()) {
            return feet.group(1) + " ft " + feet.group(2) + " in";
        }
        boolean known = height || answers.has(ProfileQuestion.HEIGHT);
        return known && BARE_NUMBER.matcher(answer).matches()
                ? (answer + " " + question.unit().of(isUs())).strip()
                : answer;
    }
}
