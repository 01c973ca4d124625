package batchwright.report.labels;

import java.math.BigDecimal;

/** A size of paper, upright [mm]. A4: ISO 216; Letter: 8.5 x 11 inches (ANSI/ASME Y14.1). */
public enum Paper {
    A4("A4", "210", "297"),
    LETTER("Letter", "215.9", "279.4");

    private final String label;
    private final BigDecimal widthMm;
    private final BigDecimal heightMm;

    Paper(String label, String widthMm, String heightMm) {
        this.label = label;
        this.widthMm = new BigDecimal(widthMm);
        this.heightMm = new BigDecimal(heightMm);
    }

    public String label() {
        return label;
    }

    public BigDecimal widthMm() {
        return widthMm;
    }

    public BigDecimal heightMm() {
        return heightMm;
    }
}
