package batchwright.person;

import java.util.Locale;

/** What a profile may answer of health, each with yes or no. */
public enum HealthQuestion {
    PREGNANT_OR_BREASTFEEDING("pregnancy or breastfeeding"),
    /** Now or in the past. */
    EATING_DISORDER("an eating disorder"),
    KIDNEY_DISEASE("kidney disease"),
    /** Insulin, sulfonylureas, SGLT2 inhibitors and the like. */
    DIABETES_MEDICINE("medicine for diabetes"),
    HEART_FAILURE("heart failure"),
    CANCER("cancer"),
    GALLSTONES("gallstones that give trouble"),
    RECENT_SURGERY("surgery not long ago"),
    LITHIUM("lithium"),
    WARFARIN("warfarin"),
    MAO_INHIBITOR("an MAO inhibitor"),
    /** More than 5 % of weight in 6-12 months. */
    LOST_WEIGHT_WITHOUT_TRYING("weight lost without trying"),
    /** More than 5 days. */
    HARDLY_ATE("days with hardly any food");

    private final String words;

    HealthQuestion(String words) {
        this.words = words;
    }

    /** As written in a profile. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Short, for a list of what was not said. */
    public String words() {
        return words;
    }

    /** Whether it concerns a body of this sex. */
    public boolean concerns(Sex sex) {
        return this != PREGNANT_OR_BREASTFEEDING || sex == Sex.FEMALE;
    }
}
