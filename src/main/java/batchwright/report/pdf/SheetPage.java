package batchwright.report.pdf;

import batchwright.report.labels.FilledSheet;
import batchwright.report.labels.LabelFit;
import batchwright.report.labels.LabelLine;
import batchwright.report.labels.LabelLook;
import batchwright.report.labels.LabelSheet;
import batchwright.report.labels.SetLabel;
import java.awt.Color;
import java.io.IOException;
import java.math.BigDecimal;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;

/** Draws a sheet of labels. Lengths are mm from the upper left corner of the paper; a PDF has points from the lower left one. */
final class SheetPage {
    private static final double POINTS_PER_MM = 72 / 25.4;
    /** A hair line where labels are cut, should the paper be plain. */
    private static final double LINE_MM = 0.1;

    private static final Color LINE = new Color(0xb9b9b9);
    /** Bold letters are the same letters with an outline: its width as a multiple of their size. */
    private static final double BOLD = 0.035;

    private final PDDocument pdf;
    private final LabelSheet sheet;
    private final LiberationSans face;
    private final LabelFit fit;

    SheetPage(PDDocument pdf, LabelSheet sheet, LiberationSans face) {
        this.pdf = pdf;
        this.sheet = sheet;
        this.face = face;
        this.fit = new LabelFit(sheet, face);
    }

    void add(FilledSheet filled) throws IOException {
        var page = new PDPage(new PDRectangle(
                points(sheet.paper().widthMm()), points(sheet.paper().heightMm())));
        pdf.addPage(page);
        try (var content = new PDPageContentStream(pdf, page)) {
            for (int i = 0; i < filled.labels().size(); i++) {
                int place = filled.taken() + i;
                draw(
                        content,
                        filled.labels().get(i),
                        sheet.leftMm(place % sheet.columns()).doubleValue(),
                        sheet.topMm(place / sheet.columns()).doubleValue());
            }
        }
    }

    /** In the middle of its height; what would reach beyond the label is cut off. */
    private void draw(PDPageContentStream content, SetLabel label, double left, double top) throws IOException {
        double height = sheet.labelHeightMm().doubleValue();
        content.saveGraphicsState();
        box(content, left, top);
        content.setStrokingColor(LINE);
        content.setLineWidth(points(LINE_MM));
        content.stroke();
        box(content, left, top);
        content.clip();
        content.setStrokingColor(Color.BLACK);
        double y = top + Math.max(sheet.topInsetMm(), (height - fit.heightMm(label.lines(), label.look())) / 2);
        for (LabelLine line : label.lines()) {
            double mm = label.look().mm(line.role());
            for (String words : fit.broken(line, label.look())) {
                write(content, words, line, label.look(), left + sheet.sideInsetMm(), y + mm * face.baseline());
                y += mm * LabelLook.LINE;
            }
        }
        content.restoreGraphicsState();
    }

    private void box(PDPageContentStream content, double left, double top) throws IOException {
        double height = sheet.labelHeightMm().doubleValue();
        content.addRect(points(left), fromBelow(top + height), points(sheet.labelWidthMm()), points(height));
    }

    private void write(
            PDPageContentStream content, String words, LabelLine line, LabelLook look, double left, double baseline)
            throws IOException {
        float size = (float) look.points(line.role());
        content.beginText();
        content.setFont(face.font(), size);
        content.setRenderingMode(line.role().bold() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
        content.setLineWidth((float) (size * BOLD));
        content.newLineAtOffset(points(left), fromBelow(baseline));
        content.showText(face.shown(words));
        content.endText();
    }

    private float fromBelow(double mm) {
        return points(sheet.paper().heightMm().doubleValue() - mm);
    }

    private static float points(BigDecimal mm) {
        return points(mm.doubleValue());
    }

    private static float points(double mm) {
        return (float) (mm * POINTS_PER_MM);
    }
}
