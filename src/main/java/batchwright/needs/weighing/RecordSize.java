package batchwright.needs.weighing;

/**
 * How much stands behind a figure.
 *
 * @param days from the first to the last day of the record
 * @param weighings that were used
 * @param loggedDays whose food is recorded completely
 */
public record RecordSize(int days, int weighings, int loggedDays) {
    /** Before that, only what was known without weighing is shown; our choice. */
    public static final int LEAST_DAYS = 14;

    public static final int LEAST_WEIGHINGS = 8;
    public static final int LEAST_LOGGED_DAYS = 10;

    public boolean isEnough() {
        return days >= LEAST_DAYS && weighings >= LEAST_WEIGHINGS && loggedDays >= LEAST_LOGGED_DAYS;
    }
}
