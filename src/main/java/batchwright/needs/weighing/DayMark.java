package batchwright.needs.weighing;

/** What makes a weight tell less, or something else, than it usually does. */
public enum DayMark {
    /** Weighed and fed otherwise: the weight of that day is left out. */
    ILL("ill"),
    /** The same. */
    TRAVEL("travel"),
    /** Creatine brings water into muscle within about a week. */
    CREATINE_STARTED("creatine started"),
    /** And it leaves again. */
    CREATINE_STOPPED("creatine stopped"),
    /** The first day of a period; water comes before it and leaves with it. */
    PERIOD_STARTED("period started");

    private final String label;

    DayMark(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** Whether the weight of that day is left out. */
    boolean hidesWeight() {
        return this == ILL || this == TRAVEL;
    }
}
