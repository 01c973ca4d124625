package batchwright.report.html;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A picture inside the page. It is drawn {@value #WIDTH} units wide and scaled to where it stands: on the smallest phone a unit is
 * a little less than a pixel. Colours come from classes of the style sheet, so that they change with light and dark.
 */
final class Svg {
    static final int WIDTH = 360;

    /** Which end of a text stands at its place. */
    enum Anchor {
        START("start"),
        MIDDLE("middle"),
        END("end");

        private final String word;

        Anchor(String word) {
            this.word = word;
        }
    }

    private final Html html;

    private Svg(Html html) {
        this.html = html;
    }

    /** @param says what the picture shows, in one sentence */
    static Svg open(Html html, double height, String says) {
        html.open(
                "svg",
                "viewBox",
                "0 0 " + WIDTH + " " + number(height),
                "role",
                "img",
                "aria-label",
                says,
                "xmlns",
                "http://www.w3.org/2000/svg");
        return new Svg(html);
    }

    void close() {
        html.close().line();
    }

    Svg rectangle(double x, double y, double width, double height, String look) {
        html.open(
                        "rect",
                        "x",
                        number(x),
                        "y",
                        number(y),
                        "width",
                        number(Math.max(0, width)),
                        "height",
                        number(height),
                        "class",
                        look)
                .close();
        return this;
    }

    Svg line(double x1, double y1, double x2, double y2, String look) {
        html.open("line", "x1", number(x1), "y1", number(y1), "x2", number(x2), "y2", number(y2), "class", look)
                .close();
        return this;
    }

    Svg circle(double x, double y, double radius, String look) {
        html.open("circle", "cx", number(x), "cy", number(y), "r", number(radius), "class", look)
                .close();
        return this;
    }

    /** @param points x, y, x, y, ... */
    Svg path(String look, boolean closed, double... points) {
        var d = new StringBuilder();
        for (int i = 0; i < points.length; i += 2) {
            d.append(i == 0 ? "M" : "L").append(number(points[i])).append(' ').append(number(points[i + 1]));
        }
        html.open("path", "d", d.append(closed ? "Z" : "").toString(), "class", look)
                .close();
        return this;
    }

    Svg text(double x, double y, Anchor anchor, String look, String text) {
        html.element("text", text, "x", number(x), "y", number(y), "text-anchor", anchor.word, "class", look);
        return this;
    }

    /** A tenth of a unit is finer than any screen. */
    private static String number(double value) {
        return BigDecimal.valueOf(value)
                .setScale(1, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
