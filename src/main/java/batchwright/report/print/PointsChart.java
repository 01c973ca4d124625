package batchwright.report.print;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Points on one scale, a row each, in plain characters, for the last column of a table. A point that is not proven stands at the
 * end of the band in which it may lie.
 */
public final class PointsChart {
    static final char POINT = '*';
    static final char IN_FORCE = '#';
    public static final char BAND = ':';

    private final int columns;
    private final double least;
    private final double most;

    /**
     * A row's point.
     *
     * @param least it is no less; empty when nothing is known
     * @param most it is no more; empty when nothing is known
     * @param atLeast whether the known point is the least of the band, not the most
     */
    public record Dot(OptionalDouble least, OptionalDouble most, boolean atLeast, boolean inForce) {
        private static final OptionalDouble NONE = OptionalDouble.empty();

        public static Dot nothing(boolean inForce) {
            return new Dot(NONE, NONE, false, inForce);
        }
    }

    /** The scale ends at the least and the most that any row knows. */
    public PointsChart(int columns, List<Dot> dots) {
        this.columns = columns;
        this.least = dots.stream()
                .flatMapToDouble(d -> d.most().isPresent() ? d.least().stream() : OptionalDouble.empty().stream())
                .min()
                .orElse(0);
        this.most = dots.stream().flatMapToDouble(d -> d.most().stream()).max().orElse(least);
    }

    /** Two lines: the ends of the scale, and the scale. */
    public String head(String from, String to) {
        String space = " ".repeat(Math.max(1, columns - from.length() - to.length()));
        return from + space + to + "\n+" + "-".repeat(columns - 2) + "+";
    }

    public double least() {
        return least;
    }

    public double most() {
        return most;
    }

    public String row(Dot dot) {
        if (dot.least().isEmpty() || dot.most().isEmpty()) {
            return "";
        }
        int from = column(dot.least().getAsDouble());
        int to = column(dot.most().getAsDouble());
        String mark = String.valueOf(dot.inForce() ? IN_FORCE : POINT);
        String band = String.valueOf(BAND).repeat(to - from);
        return " ".repeat(from) + (dot.atLeast() ? mark + band : band + mark);
    }

    private int column(double value) {
        return most == least ? 0 : Math.toIntExact(Math.round((value - least) / (most - least) * (columns - 1)));
    }
}
