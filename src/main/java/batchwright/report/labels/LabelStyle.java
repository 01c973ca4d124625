package batchwright.report.labels;

/**
 * What a reader chooses of labels.
 *
 * @param sheet they are printed on; the paper of a report, too
 * @param startAt the first free label of a sheet already begun, row by row; 1 is that of a new sheet
 */
public record LabelStyle(LabelSheet sheet, LabelRounding rounding, int startAt) {
    /** @throws IllegalArgumentException when a sheet has no such label */
    public LabelStyle {
        if (startAt < 1 || startAt > sheet.labels()) {
            throw new IllegalArgumentException(
                    "startAt (" + startAt + ") must be between 1 and " + sheet.labels() + ".");
        }
    }

    /** From the first label of a new sheet. */
    public LabelStyle(LabelSheet sheet, LabelRounding rounding) {
        this(sheet, rounding, 1);
    }
}
