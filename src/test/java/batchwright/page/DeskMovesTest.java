package batchwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.management.ObjectName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sliders of the desk over HTTP: what comes of them, and that nothing piles up. */
class DeskMovesTest {
    private static final String EATER = "parent-holding";
    private static final Pattern STAMP = Pattern.compile("data-stamp=\"(\\d+)\"");
    private static final int ROUND = 10;
    private static final int MOVES = 100;

    private static HttpResponse<String> move(OpenedPage page, String budget, String... eaters) {
        List<String> form =
                new ArrayList<>(List.of("eater", EATER, "days", "2", "budget", budget, "dishes", "2", "sessions", "1"));
        form.addAll(List.of(eaters));
        return page.post("/desk", form.toArray(String[]::new));
    }

    /** Live objects of classes whose names begin so; what is garbage does not count. */
    private static long live(String classes) throws Exception {
        String all = (String) ManagementFactory.getPlatformMBeanServer()
                .invoke(
                        new ObjectName("com.sun.management:type=DiagnosticCommand"),
                        "gcClassHistogram",
                        new Object[] {null},
                        new String[] {String[].class.getName()});
        return all.lines()
                .map(line -> line.strip().split("\\s+"))
                .filter(row -> row.length > 3 && row[3].startsWith(classes))
                .mapToLong(row -> Long.parseLong(row[1]))
                .sum();
    }

    private static long held() throws Exception {
        return live("batchwright.plan.Plan") + live("batchwright.answer.") + live("batchwright.app.desk.");
    }

    @Test
    void a_hundred_moves_hold_no_more_answers_than_ten(@TempDir Path folder) throws Exception {
        try (OpenedPage page = OpenedPage.small(folder).enter()) {
            long afterARound = 0;
            int stamp = 0;
            for (int made = 1; made <= MOVES; made++) {
                String protein = String.format(Locale.ROOT, "1.%d", made % ROUND);
                assertThat(move(page, "60", "protein-" + EATER, protein).statusCode())
                        .isEqualTo(200);
                Matcher shown = STAMP.matcher(Desk.answer(page));
                assertThat(shown.find()).isTrue();
                assertThat(Integer.parseInt(shown.group(1))).isGreaterThan(stamp);
                stamp = Integer.parseInt(shown.group(1));
                if (made == 2 * ROUND) {
                    afterARound = held();
                }
            }
            assertThat(afterARound).isPositive();
            assertThat(held()).isLessThanOrEqualTo(afterARound + ROUND);
            assertThat(page.faults).isEmpty();
        }
    }

    @Test
    void what_is_moved_of_an_eater_stays_in_its_field_until_it_is_written_into_the_profile(@TempDir Path folder)
            throws Exception {
        try (OpenedPage page = OpenedPage.small(folder).enter()) {
            String profile = page.file("profiles/" + EATER + ".yaml");
            move(page, "", "protein-" + EATER, "1.7", "boxes-" + EATER, "2", "snacks-" + EATER, "shown");
            String shown = Desk.end(page);

            assertThat(shown)
                    .contains(
                            "name=\"protein-" + EATER + "\" value=\"1.7\"", "name=\"boxes-" + EATER + "\" value=\"2\"");
            assertThat(shown).doesNotContainPattern("name=\"snack-" + EATER + "\" value=\"[^\"]+\" checked");
            assertThat(page.file("profiles/" + EATER + ".yaml")).isEqualTo(profile);

            assertThat(page.post("/desk/write").body()).contains("Written into");
            assertThat(page.file("profiles/" + EATER + ".yaml"))
                    .contains("protein: 1.7 g per kg", "containers_a_day: 2", "only: []");
        }
    }

    @Test
    void what_needs_refuse_is_shown_and_what_no_profile_may_say_stays_in_its_field(@TempDir Path folder)
            throws Exception {
        try (OpenedPage page = OpenedPage.small(folder).enter()) {
            HttpResponse<String> wrong = move(page, "", "protein-" + EATER, "9");
            assertThat(wrong.statusCode()).isEqualTo(422);
            assertThat(wrong.body()).contains("more than 3.5", "href=\"#protein-" + EATER + "\"", "value=\"9\"");

            move(page, "", "goal-" + EATER, "-1500");
            assertThat(Desk.end(page))
                    .contains("A caution stops planning.")
                    .doesNotContain("class=\"tiles\"", "Keep this plan");
        }
    }

    /** Without scripts, too: asked for, worked out, shown with its figures; a move takes it away. */
    @Test
    void cost_against_protein_comes_when_it_is_asked_for(@TempDir Path folder) throws Exception {
        try (OpenedPage page = OpenedPage.small(folder).enter()) {
            assertThat(page.post("/desk/protein").statusCode()).isNotEqualTo(200);
            move(page, "");
            assertThat(Desk.answer(page)).contains("action=\"/desk/protein\"").doesNotContain("data-sets");

            assertThat(page.post("/desk/protein").statusCode()).isEqualTo(200);
            String shown = Desk.answer(page);
            assertThat(shown)
                    .contains("Cost against protein", "<svg", "data-sets=\"protein-" + EATER + "=", " (now)")
                    .doesNotContain("action=\"/desk/protein\"");

            move(page, "", "protein-" + EATER, "1.234");
            assertThat(Desk.answer(page)).contains("action=\"/desk/protein\"").doesNotContain("data-sets");
            assertThat(page.faults).isEmpty();
        }
    }

    @Test
    void a_plan_that_changed_meanwhile_is_not_kept_unseen(@TempDir Path folder) throws Exception {
        try (OpenedPage page = OpenedPage.small(folder).enter()) {
            move(page, "");
            Desk.answer(page);
            assertThat(page.post("/desk/keep", "stamp", "0").statusCode()).isEqualTo(422);
            assertThat(folder.resolve("plans")).doesNotExist();
        }
    }
}
