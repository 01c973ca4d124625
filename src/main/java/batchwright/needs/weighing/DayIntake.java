package batchwright.needs.weighing;

/**
 * What is recorded of a day's food, in kcal as its record says, 0 or more.
 *
 * @param plannedKcal weighed out by a plan
 * @param unplannedKcal all else: eaten out, estimated
 * @param complete whether that was all; a day that is not complete is not taken for a day of little food
 */
public record DayIntake(double plannedKcal, double unplannedKcal, boolean complete) {
    /** Nothing is known of it. */
    public static final DayIntake NOT_LOGGED = new DayIntake(0, 0, false);

    public DayIntake {
        if (!(plannedKcal >= 0 && unplannedKcal >= 0) || Double.isInfinite(plannedKcal + unplannedKcal)) {
            throw new IllegalArgumentException(
                    "plannedKcal (" + plannedKcal + ") and unplannedKcal (" + unplannedKcal + ") must be 0 or more.");
        }
    }

    public double kcal() {
        return plannedKcal + unplannedKcal;
    }
}
