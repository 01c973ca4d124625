package batchwright.report.labels;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Collectors;

/** The part of the style sheet that depends on the paper and the label sheet: sizes in mm, for print only; and the sizes of type. */
public final class LabelCss {
    private LabelCss() {}

    public static String of(LabelSheet sheet) {
        Paper paper = sheet.paper();
        BigDecimal gap = sheet.columns() > 1
                ? sheet.leftMm(1).subtract(sheet.leftMm(0)).subtract(sheet.labelWidthMm())
                : BigDecimal.ZERO;
        return """
                @page { size: %1$s %2$s; margin: 13mm; }
                @page labels { size: %1$s %2$s; margin: 0; }
                @media print {
                  .sheet {
                    width: %1$s; height: %2$s; padding: %3$s 0 0 %4$s;
                    grid-template-columns: repeat(%5$s, %6$s); grid-auto-rows: %7$s; column-gap: %8$s;
                  }
                  .label { padding: %9$s %10$s; line-height: %11$s; }
                }
                """.formatted(
                                mm(paper.widthMm()),
                                mm(paper.heightMm()),
                                mm(sheet.topMm(0)),
                                mm(sheet.leftMm(0)),
                                sheet.columns(),
                                mm(sheet.labelWidthMm()),
                                mm(sheet.labelHeightMm()),
                                mm(gap),
                                mm(BigDecimal.valueOf(sheet.topInsetMm())),
                                mm(BigDecimal.valueOf(sheet.sideInsetMm())),
                                LabelLook.LINE)
                + LabelLook.ALL.stream().map(LabelCss::sizes).collect(Collectors.joining());
    }

    private static String sizes(LabelLook look) {
        return "." + look.id() + " { --big: " + look.big() + "pt; --middle: " + look.middle() + "pt; --small: "
                + look.small() + "pt; }\n";
    }

    /** To a thousandth of a millimetre. */
    private static String mm(BigDecimal value) {
        BigDecimal rounded = value.setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
        return (rounded.signum() == 0 ? "0" : rounded.toPlainString()) + "mm";
    }
}
