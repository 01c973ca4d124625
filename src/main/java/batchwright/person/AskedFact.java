package batchwright.person;

import java.util.Locale;

/** A fact that is asked for only where a decision about safety hangs on it; yes or no in a profile, among the questions of health. */
public enum AskedFact {
    /** A doctor or dietitian knows this goal and agrees. */
    DOCTOR_AGREES,
    /**
     * Any sign besides a low weight that eating more can be dangerous: much alcohol, insulin, water tablets, drugs against acid,
     * chemotherapy, low potassium, phosphate or magnesium, or more than 10 % of weight lost in half a year.
     */
    REFEEDING_SIGNS;

    /** As written in a profile. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
