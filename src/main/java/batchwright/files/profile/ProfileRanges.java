package batchwright.files.profile;

import batchwright.files.value.NumberRange;

/** What a profile may say of figures that can be changed elsewhere too. */
public final class ProfileRanges {
    public static final NumberRange BAND =
            NumberRange.of("energy_band", "1", "15", "%", "the part of the aim that a day may miss");
    public static final NumberRange PROTEIN =
            NumberRange.of("protein", "0.5", "3.5", "g per kg", "of body weight a day; more has no known use");
    public static final NumberRange CONTAINERS = NumberRange.of("containers_a_day", "1", "6", "", "");

    /** Of a surplus or a deficit. */
    public static final NumberRange KCAL = NumberRange.of("rate", "1", "1500", "kcal a day", GoalGrammar.WHY);

    private ProfileRanges() {}
}
