package batchwright.person;

/** How far and how often what holds the weight may be set anew by weighings. Our choice: docs/weighing.md. */
public final class StepLimits {
    /** From one step to the next. */
    public static final int DAYS_BETWEEN = 14;

    public static final double MOST_KCAL = 150;

    private StepLimits() {}
}
