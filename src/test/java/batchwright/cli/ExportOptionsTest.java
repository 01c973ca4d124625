package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** plan --shopping, --calendar: what is written, and what is said about it. */
class ExportOptionsTest {
    private static final List<String> PLAN =
            List.of("plan", "parent-holding", "--days", "2", "--cook", "lentil_ragu,pepper_eggs");

    @TempDir
    Path here;

    private Cli.Result plan(String... more) {
        return Cli.in(here).run(Stream.concat(PLAN.stream(), Stream.of(more)).toArray(String[]::new));
    }

    @Test
    void files_are_written_beside_the_answer_and_replace_older_ones() throws IOException {
        Path note = Files.writeString(here.resolve("s.txt"), "SHOPPING (made by Batchwright)\nolder");
        Cli.Result with = plan("--shopping", "s.csv", "--shopping", "s.txt", "--calendar", "p.ICS");

        assertThat(with.code()).isZero();
        assertThat(with.err()).isEqualTo("Wrote s.csv\nWrote s.txt\nWrote p.ICS\n");
        assertThat(with.out()).isEqualTo(plan().out());
        assertThat(here.resolve("s.csv")).content().startsWith("shop_on,cook_on,shop,");
        assertThat(note)
                .content()
                .startsWith("SHOPPING (made by Batchwright)\n2 days")
                .doesNotContain("older");
        assertThat(here.resolve("p.ICS")).content().startsWith("BEGIN:VCALENDAR\r\n");
    }

    @Test
    void what_soaks_the_evening_before_is_bought_the_day_before() {
        Cli.in(here)
                .run(
                        "plan",
                        "lifter-gaining",
                        "--days",
                        "2",
                        "--cook",
                        "chickpea_tagine,tuna_bean_pasta",
                        "--shopping",
                        "s.csv");

        assertThat(here.resolve("s.csv")).content().contains("\r\n2026-11-24,2026-11-25,");
    }

    @Test
    void cooking_starts_when_it_is_said() {
        plan("--calendar", "p.ics", "--cook-at", "14:30");

        assertThat(here.resolve("p.ics")).content().contains("DTSTART:20261125T143000");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --shopping list.pdf                 | does not end in .csv or .txt
            --calendar plan.txt                 | does not end in .ics
            --cook-at 24:00                     | from 00:00 to 23:59
            --calendar p.ics --cook-at 24:00    | from 00:00 to 23:59
            --calendar p.ics --cook-at 7        | from 00:00 to 23:59
            --shopping no-such-folder/s.csv     | no-such-folder
            --calendar folder.ics               | is a folder
            """)
    void what_cannot_be_is_refused_before_anything_is_worked_out(String options, String says) throws IOException {
        Files.createDirectory(here.resolve("folder.ics"));
        Cli.Result refused = plan(options.split(" ", -1));

        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err()).contains(says);
    }

    /** Else a list of last week would be taken for this one's. */
    @Test
    void without_a_plan_nothing_is_written_and_that_is_said() throws IOException {
        plan("--shopping", "s.csv");
        byte[] older = Files.readAllBytes(here.resolve("s.csv"));
        Cli.Result none = plan("--budget", "1", "--report", "r.html", "--shopping", "s.csv", "--calendar", "p.ics");

        assertThat(none.code()).isEqualTo(3);
        assertThat(none.err()).isEqualTo("""
                Wrote r.html: no plan, and why there is none
                No plan: s.csv is not written; the one that is there is older
                No plan: p.ics is not written
                """);
        assertThat(here.resolve("s.csv")).hasBinaryContent(older);
        assertThat(here.resolve("p.ics")).doesNotExist();
    }

    /** A report from before is worth more than the news that there is none now. */
    @Test
    void without_a_plan_a_report_from_before_stays() throws IOException {
        plan("--report", "r.html");
        byte[] older = Files.readAllBytes(here.resolve("r.html"));
        Cli.Result none = plan("--budget", "1", "--report", "r.html");

        assertThat(none.err()).isEqualTo("No plan: r.html is not written; the one that is there is older\n");
        assertThat(here.resolve("r.html")).hasBinaryContent(older);
    }

    @Test
    void of_several_sessions_each_has_its_days() {
        Cli.Result each = plan("--cooks", "2", "--shopping", "s.csv", "--shopping", "s.txt", "--calendar", "p.ics");

        assertThat(each.code()).isIn(0, 4);
        assertThat(here.resolve("s.csv"))
                .content()
                .contains("2026-11-25,2026-11-25,")
                .contains("2026-11-26,2026-11-26,");
        assertThat(here.resolve("s.txt")).content().contains("FOR WED 25 NOV: ", "FOR THU 26 NOV: ");
        assertThat(here.resolve("p.ics"))
                .content()
                .containsSubsequence(
                        "DTSTART;VALUE=DATE:20261125", "SUMMARY:Cook ", "DTSTART;VALUE=DATE:20261126", "SUMMARY:Cook ");
    }

    @Test
    void shopping_once_is_one_trip() throws IOException {
        Folders.stocked(here);
        plan("--cooks", "2", "--shop", "once", "--shopping", "s.csv", "--shopping", "s.txt");

        assertThat(here.resolve("s.csv"))
                .content()
                .contains("2026-11-25,2026-11-26,")
                .doesNotContain("2026-11-26,2026-11-26,");
        assertThat(here.resolve("s.txt"))
                .content()
                .containsOnlyOnce("FOR WED 25 NOV\n")
                .doesNotContain("FOR THU 26 NOV")
                .containsOnlyOnce("AT HOME")
                .containsOnlyOnce("[ ] salt\n");
        // Packs bought now are not at home yet, though the second session counts on what the first leaves of them.
        String atHome = Files.readString(here.resolve("s.txt")).replaceAll("(?s).*AT HOME", "");
        assertThat(atHome).contains("[ ] olive oil, ").doesNotContain("pasta");
        assertThat(here.resolve("s.csv"))
                .content()
                .containsPattern("2026-11-26,.*,whole_wheat_pasta,.*,[1-9]\\d*,\\d+,\\d+");
    }
}
