package batchwright.report.export;

import batchwright.Golden;
import batchwright.answer.PlanAnswer;
import batchwright.app.WriteStarterFiles;
import batchwright.report.html.Reports;
import batchwright.report.plan.PlanText;
import batchwright.report.print.Commands;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A day of one dish as text of two widths, as table, note and calendar: read by a person. */
class PlanGoldenTest {
    private static final Path APPROVED = Path.of("src/test/resources/golden/plan");
    private static PlanAnswer answer;
    private static WholePlan plan;

    @BeforeAll
    static void makePlan(@TempDir Path folder) {
        new WriteStarterFiles().into(folder);
        answer = Reports.plan(folder, List.of("parent-holding"), List.of("lentil_ragu"), 1);
        plan = WholePlan.of(answer).orElseThrow();
    }

    /** How long the search was is not what the text is about. */
    private static String text(int width) {
        return PlanText.of(answer, new Commands(""), false, width)
                .replaceAll("\\d+ relaxations? solved", "N relaxations solved");
    }

    @Test
    void text_of_80_columns() {
        Golden.check(APPROVED.resolve("80-columns.txt"), text(80));
    }

    @Test
    void text_of_140_columns() {
        Golden.check(APPROVED.resolve("140-columns.txt"), text(140));
    }

    @Test
    void table() {
        Golden.check(APPROVED.resolve("shopping.csv"), ShoppingCsv.of(plan));
    }

    @Test
    void note() {
        Golden.check(APPROVED.resolve("shopping.txt"), ShoppingNote.of(plan));
    }

    @Test
    void calendar() {
        Golden.check(APPROVED.resolve("plan.ics"), PlanCalendar.of(plan, Optional.of(LocalTime.of(14, 0))));
    }
}
