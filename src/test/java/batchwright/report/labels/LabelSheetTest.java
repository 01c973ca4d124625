package batchwright.report.labels;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LabelSheetTest {
    @ParameterizedTest
    @EnumSource(LabelSheet.class)
    void the_grid_lies_on_the_paper_with_like_margins(LabelSheet sheet) {
        BigDecimal right = sheet.leftMm(sheet.columns() - 1).add(sheet.labelWidthMm());
        BigDecimal bottom = sheet.topMm(sheet.rows() - 1).add(sheet.labelHeightMm());

        assertThat(sheet.leftMm(0)).isNotNegative();
        assertThat(sheet.topMm(0)).isNotNegative();
        assertThat(sheet.paper().widthMm().subtract(right)).isEqualByComparingTo(sheet.leftMm(0));
        assertThat(sheet.paper().heightMm().subtract(bottom)).isEqualByComparingTo(sheet.topMm(0));
        assertThat(LabelSheet.of(sheet.id())).contains(sheet);
    }

    /** Margins and pitch such sheets commonly have, in inches times 25.4 or mm (common practice). */
    @ParameterizedTest
    @CsvSource({
        "LETTER_3X10, 4.7625, 12.7, 69.85, 25.4",
        "LETTER_2X5, 3.96875, 12.7, 106.3625, 50.8",
        "A4_2X7, 4.65, 15.15, 101.6, 38.1",
        "A4_3X8, 0, 0.5, 70, 37"
    })
    void margins_and_pitch(LabelSheet sheet, BigDecimal left, BigDecimal top, BigDecimal across, BigDecimal down) {
        assertThat(sheet.leftMm(0)).isEqualByComparingTo(left);
        assertThat(sheet.topMm(0)).isEqualByComparingTo(top);
        assertThat(sheet.leftMm(1).subtract(sheet.leftMm(0))).isEqualByComparingTo(across);
        assertThat(sheet.topMm(1).subtract(sheet.topMm(0))).isEqualByComparingTo(down);
    }
}
