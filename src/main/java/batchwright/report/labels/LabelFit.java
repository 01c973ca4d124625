package batchwright.report.labels;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * How large the letters of a label can be. Widths are estimated, not measured: a letter takes about half of the height of the type
 * on the average, of bold type a little more. When even small type does not fit, the way to reheat is said in short, then the names
 * are cut; allergens and dates never are.
 *
 * @param points height of the type
 * @param name of the dish, cut where it had to be
 */
public record LabelFit(double points, String name, String eater, String reheat) {
    private static final double MM_PER_POINT = 25.4 / 72;
    private static final double LETTER = 0.5;
    private static final double BOLD = 0.55;
    /** Height of a line of type, as in the style sheet. */
    private static final double LINE = 1.17;
    /** Room on each side [mm], as in the style sheet. */
    private static final double SIDE_MM = 2.5;

    private static final double TOP_MM = 1.2;

    private static final List<Double> GOOD = List.of(10.0, 9.5, 9.0, 8.5, 8.0, 7.5, 7.0);
    private static final List<Double> SMALL = List.of(7.0, 6.5, 6.0, 5.5, 5.0);
    private static final List<Integer> CUTS = List.of(90, 60, 40, 24);

    /** All sizes that type can have [points], the largest first. */
    static DoubleStream sizes() {
        return Stream.concat(GOOD.stream(), SMALL.stream())
                .mapToDouble(Double::doubleValue)
                .distinct();
    }

    public static LabelFit of(LabelSheet sheet, String dish, String eater, LabelWords words) {
        var full = new LabelFit(0, dish, eater, words.reheat());
        for (double points : GOOD) {
            if (full.fits(sheet, points, words)) {
                return full.at(points);
            }
        }
        var brief = new LabelFit(0, dish, eater, LabelWords.reheatInShort());
        for (double points : SMALL.subList(0, SMALL.size() - 1)) {
            if (brief.fits(sheet, points, words)) {
                return brief.at(points);
            }
        }
        for (int cut : CUTS) {
            var cutShort = new LabelFit(0, Shortened.to(cut, dish), Shortened.to(cut, eater), brief.reheat);
            for (double points : SMALL) {
                if (cutShort.fits(sheet, points, words)) {
                    return cutShort.at(points);
                }
            }
        }
        double least = SMALL.get(SMALL.size() - 1);
        int cut = CUTS.get(CUTS.size() - 1);
        return new LabelFit(least, Shortened.to(cut, dish), Shortened.to(cut, eater), brief.reheat);
    }

    /** The same in smaller type: labels of a dish look alike. */
    public LabelFit atMost(double size) {
        return at(Math.min(points, size));
    }

    private LabelFit at(double size) {
        return new LabelFit(size, name, eater, reheat);
    }

    private boolean fits(LabelSheet sheet, double size, LabelWords words) {
        double mm = size * MM_PER_POINT;
        double width = sheet.labelWidthMm().doubleValue() - 2 * SIDE_MM;
        double height = sheet.labelHeightMm().doubleValue() - 2 * TOP_MM;
        int lines = lines(name, width / mm / BOLD)
                + lines(eater + ", " + words.number(), width / mm / BOLD)
                + lines(words.figures(), width / mm / LETTER)
                + lines("Allergens: " + words.allergens(), width / mm / BOLD)
                + lines(words.cooked() + words.by() + words.then(), width / mm / BOLD)
                + lines("Reheat: " + reheat, width / mm / LETTER);
        return lines * mm * LINE <= height;
    }

    private static int lines(String text, double lettersALine) {
        return (int) Math.ceil(text.codePointCount(0, text.length()) / lettersALine);
    }
}
