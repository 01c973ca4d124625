package batchwright.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.answer.PlanAnswer;
import batchwright.plan.Batch;
import batchwright.report.labels.LabelSheet;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/** The boxes around labels at the end of a printed report, measured against the grid of the sheet. */
final class LabelsOnPaper {
    private static final double MM = 0.5;

    private LabelsOnPaper() {}

    /** @param startAt the first free place of the first sheet, from 1 */
    static void lieWhereTheSheetHasThem(byte[] printed, PlanAnswer answer, LabelSheet sheet, int startAt)
            throws IOException {
        int containers = answer.plan().orElseThrow().batches().stream()
                .mapToInt(Batch::containers)
                .sum();
        try (PDDocument pdf = Loader.loadPDF(printed)) {
            for (PDPage page : pdf.getPages()) {
                assertThat(page.getMediaBox().getWidth() * 25.4 / 72)
                        .isCloseTo(sheet.paper().widthMm().doubleValue(), within(MM));
                assertThat(page.getMediaBox().getHeight() * 25.4 / 72)
                        .isCloseTo(sheet.paper().heightMm().doubleValue(), within(MM));
            }
            int sheets = (startAt - 1 + containers + sheet.labels() - 1) / sheet.labels();
            List<Rectangle2D> found = new ArrayList<>();
            for (int i = pdf.getNumberOfPages() - sheets; i < pdf.getNumberOfPages(); i++) {
                found.addAll(labels(PaintedBoxes.of(pdf.getPage(i)), sheet));
            }
            assertThat(found).hasSize(containers);
            for (int i = 0; i < containers; i++) {
                int place = (startAt - 1 + i) % sheet.labels();
                assertThat(found.get(i).getX())
                        .isCloseTo(sheet.leftMm(place % sheet.columns()).doubleValue(), within(MM));
                assertThat(found.get(i).getY())
                        .isCloseTo(sheet.topMm(place / sheet.columns()).doubleValue(), within(MM));
            }
        }
    }

    private static List<Rectangle2D> labels(List<Rectangle2D> boxes, LabelSheet sheet) {
        return Stream.concat(boxes.stream(), ofFourEdges(boxes).stream())
                .filter(b -> Math.abs(b.getWidth() - sheet.labelWidthMm().doubleValue()) < MM
                        && Math.abs(b.getHeight() - sheet.labelHeightMm().doubleValue()) < MM)
                .toList();
    }

    /** A browser may paint a border as four thin boxes, one after the other. */
    private static List<Rectangle2D> ofFourEdges(List<Rectangle2D> boxes) {
        List<Rectangle2D> edges = boxes.stream()
                .filter(b -> Math.min(b.getWidth(), b.getHeight()) < MM)
                .toList();
        return IntStream.range(0, edges.size() / 4)
                .mapToObj(i -> edges.subList(4 * i, 4 * i + 4).stream()
                        .reduce(Rectangle2D::createUnion)
                        .orElseThrow())
                .toList();
    }
}
