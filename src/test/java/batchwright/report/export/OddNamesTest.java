package batchwright.report.export;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.app.WriteStarterFiles;
import batchwright.report.html.Reports;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Names that no one should have come out as text in every file: of an eater, a dish, a food, a shop, a pack, a staple. */
class OddNamesTest {
    static List<String> names() {
        return List.of(
                "<b>bold</b> & \"quoted\", 'single'; a \\ and a \\n",
                "=1+1",
                "+1",
                "@SUM(A1:A9)",
                "-2+3",
                "=cmd|' /C calc'!A0",
                "שלום, עולם",
                "\uD83C\uDF72 stew \uD83D\uDC69\u200D\uD83C\uDF73",
                Reports.oddName("Long"));
    }

    private static WholePlan plan(Path folder, String name) throws Exception {
        new WriteStarterFiles().into(folder);
        String cell = "\"" + name.replace("\"", "\"\"") + "\"";
        Reports.replace(
                folder.resolve("profiles/parent-holding.yaml"), "(?m)^name: .*$", "name: " + Reports.yaml(name));
        Path dish = folder.resolve("foods/dishes/lentil_ragu.yaml");
        // In a dish a line break can be written, too.
        Reports.replace(dish, "(?m)^name: .*$", "name: " + Reports.yaml(name + "\nsecond line"));
        Reports.replace(dish, "(?m)^staples:.*$", "staples: [" + Reports.yaml(name) + "]");
        Files.writeString(dish, Files.readString(dish).replaceAll("(?m)^    with:.*\n", ""));
        Reports.replace(
                folder.resolve("foods/catalogue.csv"),
                "(?m)^whole_wheat_pasta,(\"[^\"]*\"|[^,]*),",
                "whole_wheat_pasta," + cell + ",");
        Reports.replace(
                folder.resolve("foods/shop.csv"),
                "(?m)^whole_wheat_pasta,[^,]*,(\"[^\"]*\"|[^,]*),",
                "whole_wheat_pasta," + cell + "," + cell + ",");
        return WholePlan.of(Reports.plan(folder, List.of("parent-holding"), List.of("lentil_ragu"), 1))
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("names")
    void come_out_as_text(String name, @TempDir Path folder) throws Exception {
        WholePlan plan = plan(folder, name);

        table(plan, name);
        note(plan, name);
        calendar(plan, name);
    }

    private static void table(WholePlan plan, String name) throws Exception {
        List<CSVRecord> rows = ShoppingFilesTest.read(ShoppingCsv.of(plan));
        boolean formula = name.matches("(?s)[=+@-].*");

        assertThat(rows)
                .filteredOn(r -> r.get("food").equals("whole_wheat_pasta"))
                .isNotEmpty()
                .allSatisfy(r -> {
                    for (String column : List.of("name", "shop", "pack")) {
                        assertThat(r.get(column)).isEqualTo(formula ? "'" + name : name);
                    }
                });
        assertThat(rows).allSatisfy(r -> assertThat(r.stream()).noneMatch(c -> c.matches("(?s)[=+@-].*")));
    }

    private static void note(WholePlan plan, String name) {
        String note = ShoppingNote.of(plan);

        assertThat(note.replaceAll("\\s+", " ")).contains("for " + name, "[ ] " + name + " ");
        // A box, an indent, a heading: no line begins with what a spreadsheet or a mark-up would take for more than
        // text.
        assertThat(note.lines()).noneMatch(l -> l.matches("[=@-].*"));
    }

    private static void calendar(WholePlan plan, String name) throws Exception {
        Calendar read = PlanCalendarTest.read(PlanCalendar.of(plan, Optional.of(LocalTime.of(9, 0))));
        List<VEvent> events = read.getComponents(VEvent.VEVENT);

        assertThat(events.stream().map(PlanCalendarTest::summary).map(OddNamesTest::withoutIsolates))
                .contains("Eat by today: " + name + "\nsecond line from the fridge")
                .anyMatch(s -> s.startsWith(name + ": ") && s.endsWith("x " + name + "\nsecond line"));
    }

    private static String withoutIsolates(String text) {
        return text.replaceAll("[\u2068\u2069]", "");
    }
}
