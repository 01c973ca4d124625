package batchwright.report.html.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A picture inside the page. It is drawn {@value #WIDTH} units wide and scaled to where it stands: on the smallest phone a unit is
 * a little less than a pixel. Colours come from classes of the style sheet ({@code look}), so that they change with light and dark.
 */
public final class Svg {
    public static final int WIDTH = 360;

    /** Which end of a text is at its place. */
    public enum Anchor {
        START("start"),
        MIDDLE("middle"),
        END("end");

        private final String word;

        Anchor(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** What a picture is made of; numbers as they are written. */
    public sealed interface Shape {}

    public record Rectangle(String x, String y, String width, String height, String look) implements Shape {}

    public record Line(String x1, String y1, String x2, String y2, String look) implements Shape {}

    public record Circle(String x, String y, String radius, String look) implements Shape {}

    /** @param d the course of the pen */
    public record Path(String d, String look) implements Shape {}

    public record Text(String x, String y, Anchor anchor, String look, String text) implements Shape {}

    private final String height;
    private final String says;
    private final List<Shape> shapes = new ArrayList<>();

    /** @param says what the picture shows, in one sentence */
    public Svg(double height, String says) {
        this.height = number(height);
        this.says = says;
    }

    public String height() {
        return height;
    }

    public String says() {
        return says;
    }

    /** Later ones lie above earlier ones. */
    public List<Shape> shapes() {
        return Collections.unmodifiableList(shapes);
    }

    public void rectangle(double x, double y, double width, double height, String look) {
        shapes.add(new Rectangle(number(x), number(y), number(Math.max(0, width)), number(height), look));
    }

    public void line(double x1, double y1, double x2, double y2, String look) {
        shapes.add(new Line(number(x1), number(y1), number(x2), number(y2), look));
    }

    public void circle(double x, double y, double radius, String look) {
        shapes.add(new Circle(number(x), number(y), number(radius), look));
    }

    /** @param points x, y, x, y, ... */
    public void path(String look, boolean closed, double... points) {
        var d = new StringBuilder();
        for (int i = 0; i < points.length; i += 2) {
            d.append(i == 0 ? "M" : "L").append(number(points[i])).append(' ').append(number(points[i + 1]));
        }
        shapes.add(new Path(d.append(closed ? "Z" : "").toString(), look));
    }

    public void text(double x, double y, Anchor anchor, String look, String text) {
        shapes.add(new Text(number(x), number(y), anchor, look, text));
    }

    /** A tenth of a unit is finer than any screen. */
    private static String number(double value) {
        return BigDecimal.valueOf(value)
                .setScale(1, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
