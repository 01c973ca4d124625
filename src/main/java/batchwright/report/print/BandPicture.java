package batchwright.report.print;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Where a figure lies in its band, as a line of text: {@code [-----*---:---------]}, with a colon at the aim. Stands beside the
 * figure, in the same scale for all rows.
 *
 * @param columns of the whole line, odd and at least 7
 */
public record BandPicture(int least, int aim, int most, int columns) {
    /** What stands above it: the ends of the scale. */
    public String head() {
        String from = Integer.toString(least);
        String to = Integer.toString(most);
        return from + " ".repeat(Math.max(1, columns - from.length() - to.length())) + to;
    }

    /** Without a figure. */
    public String empty() {
        return line().toString();
    }

    /** What lies outside the band stands at its end. */
    public String of(BigDecimal figure) {
        StringBuilder line = line();
        line.setCharAt(place(figure), '*');
        return line.toString();
    }

    private StringBuilder line() {
        var line = new StringBuilder("[" + "-".repeat(columns - 2) + "]");
        line.setCharAt(place(BigDecimal.valueOf(aim)), ':');
        return line;
    }

    /** Between the brackets. */
    private int place(BigDecimal figure) {
        if (most <= least) {
            return columns / 2;
        }
        int steps = columns - 3;
        int step = figure.subtract(BigDecimal.valueOf(least))
                .multiply(BigDecimal.valueOf(steps))
                .divide(BigDecimal.valueOf((long) most - least), 0, RoundingMode.HALF_UP)
                .intValue();
        return 1 + Math.max(0, Math.min(steps, step));
    }
}
