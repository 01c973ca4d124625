package batchwright.report.pdf;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFStreamEngine;
import org.apache.pdfbox.contentstream.operator.state.Concatenate;
import org.apache.pdfbox.contentstream.operator.state.Restore;
import org.apache.pdfbox.contentstream.operator.state.Save;
import org.apache.pdfbox.contentstream.operator.text.BeginText;
import org.apache.pdfbox.contentstream.operator.text.EndText;
import org.apache.pdfbox.contentstream.operator.text.MoveText;
import org.apache.pdfbox.contentstream.operator.text.SetFontAndSize;
import org.apache.pdfbox.contentstream.operator.text.ShowText;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** Lines of type on the pages of a PDF: where their ink is [mm from the upper left corner], and how high the letters are that were drawn. */
final class PrintedText extends PDFStreamEngine {
    private static final double MM_PER_POINT = 25.4 / 72;

    private final List<Run> runs = new ArrayList<>();
    private StringBuilder text = new StringBuilder();
    private Rectangle2D ink = new Rectangle2D.Double();
    private double em;
    private double pageHeight;

    /** @param em size of the type [mm] */
    record Run(String text, Rectangle2D ink, double em) {
        double xHeightMm() {
            return em * LiberationHeights.X;
        }

        double capitalsMm() {
            return em * LiberationHeights.CAPITALS;
        }
    }

    private PrintedText() {
        addOperator(new Concatenate(this));
        addOperator(new Save(this));
        addOperator(new Restore(this));
        addOperator(new BeginText(this));
        addOperator(new EndText(this));
        addOperator(new MoveText(this));
        addOperator(new SetFontAndSize(this));
        addOperator(new ShowText(this));
    }

    static List<Run> of(byte[] content) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(content)) {
            var printed = new PrintedText();
            for (PDPage page : pdf.getPages()) {
                printed.pageHeight = page.getMediaBox().getHeight();
                printed.processPage(page);
            }
            return printed.runs;
        }
    }

    @Override
    protected void showText(byte[] string) throws IOException {
        text = new StringBuilder();
        ink = new Rectangle2D.Double();
        super.showText(string);
        runs.add(new Run(text.toString(), ink, em));
    }

    @Override
    protected void showGlyph(Matrix at, PDFont font, int code, Vector displacement) throws IOException {
        text.append(font.toUnicode(code));
        em = at.getScalingFactorY() * MM_PER_POINT;
        Rectangle2D outline = at.createAffineTransform()
                .createTransformedShape(scaled(((PDType0Font) font).getPath(code)))
                .getBounds2D();
        if (!outline.isEmpty()) {
            var mm = new Rectangle2D.Double(
                    outline.getX() * MM_PER_POINT,
                    (pageHeight - outline.getMaxY()) * MM_PER_POINT,
                    outline.getWidth() * MM_PER_POINT,
                    outline.getHeight() * MM_PER_POINT);
            ink = ink.isEmpty() ? mm : ink.createUnion(mm);
        }
    }

    private static Shape scaled(Shape path) {
        return AffineTransform.getScaleInstance(1.0 / LiberationHeights.UNITS, 1.0 / LiberationHeights.UNITS)
                .createTransformedShape(path);
    }
}
