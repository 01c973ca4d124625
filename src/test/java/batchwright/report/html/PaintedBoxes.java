package batchwright.report.html;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** The outer boxes of all paths painted on a page [mm from the upper left corner of the paper]. */
public final class PaintedBoxes extends PDFGraphicsStreamEngine {
    private static final double MM_PER_POINT = 25.4 / 72;
    private final Path2D path = new Path2D.Double();
    private final List<Rectangle2D> boxes = new ArrayList<>();

    private PaintedBoxes(PDPage page) {
        super(page);
    }

    public static List<Rectangle2D> of(PDPage page) throws IOException {
        var painted = new PaintedBoxes(page);
        painted.processPage(page);
        return painted.boxes;
    }

    private void painted() {
        if (path.getCurrentPoint() != null) {
            Rectangle2D box = path.getBounds2D();
            double height = getPage().getMediaBox().getHeight();
            boxes.add(new Rectangle2D.Double(
                    box.getX() * MM_PER_POINT,
                    (height - box.getMaxY()) * MM_PER_POINT,
                    box.getWidth() * MM_PER_POINT,
                    box.getHeight() * MM_PER_POINT));
        }
        path.reset();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.moveTo(p0.getX(), p0.getY());
        path.lineTo(p1.getX(), p1.getY());
        path.lineTo(p2.getX(), p2.getY());
        path.lineTo(p3.getX(), p3.getY());
        path.closePath();
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        Point2D current = path.getCurrentPoint();
        return current == null ? new Point2D.Double() : current;
    }

    @Override
    public void closePath() {
        if (path.getCurrentPoint() != null) {
            path.closePath();
        }
    }

    @Override
    public void endPath() {
        path.reset();
    }

    @Override
    public void strokePath() {
        painted();
    }

    @Override
    public void fillPath(int windingRule) {
        painted();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        painted();
    }

    @Override
    public void clip(int windingRule) {}

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void shadingFill(COSName shading) {
        path.reset();
    }
}
