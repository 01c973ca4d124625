package batchwright.report.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Of the font itself, as multiples of its size: outlines of its x and its H. */
final class LiberationHeights {
    static final int UNITS = 2048;
    static final double X = height("x");
    static final double CAPITALS = height("H");

    private LiberationHeights() {}

    private static double height(String letter) {
        try (var in = Objects.requireNonNull(
                PDDocument.class.getResourceAsStream("/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf"))) {
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
            return font.getPath(letter).getBounds2D().getHeight() / font.getUnitsPerEm();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
