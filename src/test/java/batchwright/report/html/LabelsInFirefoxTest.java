package batchwright.report.html;

import batchwright.answer.PlanAnswer;
import batchwright.report.labels.LabelRounding;
import batchwright.report.labels.LabelSheet;
import batchwright.report.labels.LabelStyle;
import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Labels that a second browser prints; from the last place of a sheet on, so that they need two sheets or three, and small errors add up. */
class LabelsInFirefoxTest {
    private static PlanAnswer answer;

    private static @Nullable Firefox browser;

    @BeforeAll
    static void start(@TempDir Path files, @TempDir Path pages) throws Exception {
        browser = Firefox.start(pages);
        answer = Reports.twoEaters(files);
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.close();
        }
    }

    @ParameterizedTest
    @EnumSource(LabelSheet.class)
    void labels_lie_on_paper_where_the_sheet_has_them(LabelSheet sheet) throws Exception {
        int startAt = sheet.labels();
        String report = HtmlReport.of(answer, new ReportStyle(new LabelStyle(sheet, LabelRounding.US, startAt)));
        byte[] pdf = Objects.requireNonNull(browser)
                .pdf(
                        report,
                        sheet.paper().widthMm().doubleValue(),
                        sheet.paper().heightMm().doubleValue());
        LabelsOnPaper.lieWhereTheSheetHasThem(pdf, answer, sheet, startAt);
    }
}
