package batchwright.report.labels;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * A sheet of like labels in columns and rows [mm]. The grid stands in the middle of the paper, rows touch each other, and columns
 * may have a gap between them. The sizes are those that such sheets commonly have (common practice).
 */
public enum LabelSheet {
    A4_3X8(Paper.A4, 3, 8, "70", "37", "0"),
    A4_2X7(Paper.A4, 2, 7, "99.1", "38.1", "2.5"),
    A4_2X4(Paper.A4, 2, 4, "99.1", "67.7", "2.5"),
    LETTER_3X10(Paper.LETTER, 3, 10, "66.675", "25.4", "3.175"),
    LETTER_2X5(Paper.LETTER, 2, 5, "101.6", "50.8", "4.7625");

    /** What most printers leave white at an edge of the paper (common practice). */
    private static final double UNPRINTABLE_MM = 4.2;

    private final Paper paper;
    private final int columns;
    private final int rows;
    private final BigDecimal labelWidthMm;
    private final BigDecimal labelHeightMm;
    private final BigDecimal gapMm;

    LabelSheet(Paper paper, int columns, int rows, String labelWidthMm, String labelHeightMm, String gapMm) {
        this.paper = paper;
        this.columns = columns;
        this.rows = rows;
        this.labelWidthMm = new BigDecimal(labelWidthMm);
        this.labelHeightMm = new BigDecimal(labelHeightMm);
        this.gapMm = new BigDecimal(gapMm);
    }

    /** As on the command line: a4-2x7. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<LabelSheet> of(String id) {
        return Arrays.stream(values()).filter(sheet -> sheet.id().equals(id)).findFirst();
    }

    public Paper paper() {
        return paper;
    }

    public int columns() {
        return columns;
    }

    public int rows() {
        return rows;
    }

    public int labels() {
        return columns * rows;
    }

    public BigDecimal labelWidthMm() {
        return labelWidthMm;
    }

    public BigDecimal labelHeightMm() {
        return labelHeightMm;
    }

    /** From the left edge of the paper to that of the labels in a column, the first being 0. */
    public BigDecimal leftMm(int column) {
        BigDecimal grid = labelWidthMm
                .multiply(BigDecimal.valueOf(columns))
                .add(gapMm.multiply(BigDecimal.valueOf(columns - 1L)));
        return half(paper.widthMm().subtract(grid)).add(labelWidthMm.add(gapMm).multiply(BigDecimal.valueOf(column)));
    }

    /** From the upper edge of the paper to that of the labels in a row, the first being 0. */
    public BigDecimal topMm(int row) {
        BigDecimal grid = labelHeightMm.multiply(BigDecimal.valueOf(rows));
        return half(paper.heightMm().subtract(grid)).add(labelHeightMm.multiply(BigDecimal.valueOf(row)));
    }

    /** Room between the side of a label and what stands on it [mm]: more where a label lies at the edge of the paper. */
    public double sideInsetMm() {
        return Math.max(2.5, UNPRINTABLE_MM - leftMm(0).doubleValue());
    }

    /** The same at its upper and lower edge. */
    public double topInsetMm() {
        return Math.max(1.2, UNPRINTABLE_MM - topMm(0).doubleValue());
    }

    private static BigDecimal half(BigDecimal margin) {
        return margin.divide(BigDecimal.valueOf(2), MathContext.DECIMAL64);
    }
}
