package batchwright.needs.intakes;

import java.util.Locale;

/** What a daily amount is. */
public enum Kind {
    /** A rule of the plan. */
    TARGET,
    /** A published figure by energy, worked out for this eater, that is no rule. */
    GUIDE,
    /** Recommended Dietary Allowance: enough for nearly every healthy person of that sex and age. */
    RDA,
    /** Adequate Intake: what healthy people eat, where no RDA could be set. Less is not known to be too little. */
    AI,
    /** Tolerable Upper Intake Level: more, day after day, may do harm. */
    UL,
    /** Chronic Disease Risk Reduction intake: more than this is worth reducing. */
    CDRR;

    /** In tables: target, guide, RDA. */
    public String label() {
        return this == TARGET || this == GUIDE ? name().toLowerCase(Locale.ROOT) : name();
    }
}
