package batchwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.report.html.web.PageUnits;
import java.io.IOException;
import java.math.BigDecimal;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From nothing to a profile, one question a page; nothing that was answered is lost. */
class StartTest {
    private static final String QUESTIONS = "/start/questions";

    /** Key, then what is sent for it. */
    private static final String[][] USUAL = {
        {"sex", "chosen", "female"},
        {"age", "words", "31"},
        {"height", "words", "168"},
        {"weight", "words", "70"},
        {"goal", "chosen", "hold"},
        {"activity", "chosen", "sitting"},
        {"training", "words", "2 h weights"},
        {"health", "chosen", "none"},
        {"avoid", "chosen", "peanut"},
        {"containers_a_day", "chosen", "3"},
    };

    private static HttpResponse<String> answer(OpenedPage page, String[] question) {
        assertThat(page.get(QUESTIONS).body()).contains("name=\"key\" value=\"" + question[0] + "\"");
        return page.post(QUESTIONS, "key", question[0], question[1], question[2]);
    }

    @Test
    void ten_answers_make_a_profile_and_its_first_plan(@TempDir Path folder) throws Exception {
        try (OpenedPage page = OpenedPage.small(folder).enter()) {
            for (String[] question : USUAL) {
                assertThat(answer(page, question).statusCode()).isEqualTo(200);
            }
            assertThat(page.get(QUESTIONS).body())
                    .contains("Check your answers", "168 cm", "70 kg", "peanut", "nothing of what was asked");
            assertThat(page.post("/start/save", "name", "Zoë B").body()).contains("Saved as profiles/zoe-b.yaml");

            assertThat(page.file("profiles/zoe-b.yaml"))
                    .contains(
                            "eater: zoe-b",
                            "age: 31",
                            "weight: 70 kg",
                            "activity: facts",
                            "day: sitting",
                            "avoid: [peanut]");
            assertThat(folder.resolve("profiles/draft.txt")).doesNotExist();
            assertThat(Desk.answer(page)).contains("5 days for Zoë B").contains("USD");
        }
    }

    @Test
    void what_was_answered_is_there_after_the_program_was_killed(@TempDir Path folder) throws IOException {
        try (OpenedPage page = OpenedPage.small(folder).enter()) {
            for (int q = 0; q < 4; q++) {
                answer(page, USUAL[q]);
            }
        }
        try (OpenedPage page = new OpenedPage(folder).enter()) {
            assertThat(page.get(QUESTIONS).body()).contains("name=\"key\" value=\"goal\"");
            assertThat(page.get(QUESTIONS + "/height").body()).contains("value=\"168 cm\"");
        }
    }

    @Test
    void a_wrong_answer_stays_in_its_field_and_says_what_is_wrong(@TempDir Path folder) throws IOException {
        try (OpenedPage page = OpenedPage.small(folder).enter()) {
            answer(page, USUAL[0]);
            HttpResponse<String> wrong = page.post(QUESTIONS, "key", "age", "words", "three hundred");

            assertThat(wrong.statusCode()).isEqualTo(422);
            assertThat(wrong.body())
                    .contains("<title>Error: ", "There is a problem", "href=\"#words\"", "value=\"three hundred\"");
            assertThat(page.get(QUESTIONS).body()).contains("name=\"key\" value=\"age\"");
        }
    }

    /** As the command line: no figures for a child. */
    @Test
    void nobody_under_age_is_asked_more(@TempDir Path folder) throws IOException {
        try (OpenedPage page = OpenedPage.small(folder).enter()) {
            answer(page, USUAL[0]);
            HttpResponse<String> young = page.post(QUESTIONS, "key", "age", "words", "15");

            assertThat(young.statusCode()).isEqualTo(422);
            assertThat(young.body()).contains("18");
            assertThat(page.get(QUESTIONS).body()).contains("name=\"key\" value=\"age\"");
        }
    }

    /** As the command line: a pregnancy is asked about, and no loss of weight is planned. */
    @Test
    void a_caution_that_stops_planning_is_shown_before_anything_is_saved(@TempDir Path folder) throws IOException {
        try (OpenedPage page = OpenedPage.small(folder).enter()) {
            for (int q = 0; q < 4; q++) {
                answer(page, USUAL[q]);
            }
            answer(page, new String[] {"goal", "chosen", "lose 0.5 % a week"});
            answer(page, USUAL[5]);
            answer(page, USUAL[6]);
            answer(page, new String[] {"health", "chosen", "eating"});
            assertThat(page.get(QUESTIONS).body()).contains("name=\"key\" value=\"health.eating_disorder\"");
            answer(page, new String[] {"health.eating_disorder", "chosen", "yes"});
            answer(page, USUAL[8]);
            answer(page, USUAL[9]);

            assertThat(page.get("/start/check").body()).contains("class=\"hot\"");
        }
    }

    @Test
    void one_goes_back_and_changes_an_answer(@TempDir Path folder) throws IOException {
        try (OpenedPage page = OpenedPage.small(folder).enter()) {
            answer(page, USUAL[0]);
            answer(page, USUAL[1]);
            assertThat(page.post("/start/back", "key", "height").body())
                    .contains("name=\"key\" value=\"age\"", "value=\"31\"");
            page.post(QUESTIONS, "key", "age", "words", "32");

            assertThat(page.file("profiles/draft.txt")).contains("age: 32").doesNotContain("age: 31");
        }
    }

    @Test
    void who_has_no_files_gets_the_starter_files_first(@TempDir Path here) throws IOException {
        var files = new PageFiles(Optional.empty(), here, Clock.systemUTC(), Optional.of(OpenedPage.DAY));
        assertThat(files.isOwn()).isFalse();
        files.begin();

        assertThat(files.isOwn()).isTrue();
        assertThat(Files.exists(here.resolve("my-kitchen/foods/shop.csv"))).isTrue();
        assertThat(new PageFiles(Optional.empty(), here, Clock.systemUTC(), Optional.of(OpenedPage.DAY)).isOwn())
                .isTrue();
    }

    /** Everything is changeable later: its own line changes, notes and all others stay. */
    @Test
    void an_answer_of_an_eater_changes_its_line_of_the_profile(@TempDir Path folder) throws IOException {
        try (OpenedPage page = OpenedPage.small(folder).enter()) {
            String eater = "/start/eater/lifter-gaining";
            List<String> before =
                    page.file("profiles/lifter-gaining.yaml").lines().toList();
            assertThat(page.get("/start").body()).contains("href=\"" + eater + "\"");
            assertThat(page.get(eater).body()).contains("74 kg", "gain 0.25 % a week", eater + "/weight");
            assertThat(page.get(eater + "/weight").body()).contains("value=\"74 kg\"", "Back to the answers");
            assertThat(page.get(eater + "/avoid").body()).contains("name=\"chosen\" value=\"peanut\"");

            assertThat(page.post(eater + "/weight", "words", "75.5").body()).contains("Written into", "75.5 kg");
            page.post(eater + "/avoid", "chosen", "peanut", "words", "pork_loin");
            HttpResponse<String> wrong = page.post(eater + "/age", "words", "old");
            assertThat(wrong.statusCode()).isEqualTo(422);
            assertThat(wrong.body()).contains("value=\"old\"");
            assertThat(page.post(eater + "/age", "words", "15").statusCode()).isEqualTo(422);

            List<String> after =
                    page.file("profiles/lifter-gaining.yaml").lines().toList();
            assertThat(after.stream().filter(line -> !before.contains(line)).toList())
                    .containsExactly("weight: 75.5 kg            # or in pounds: 163 lb", "avoid: [peanut, pork_loin]");
            assertThat(before.stream().filter(line -> !after.contains(line)).toList())
                    .hasSize(2);
            assertThat(page.get("/start/eater/..%2Fdraft").statusCode()).isGreaterThanOrEqualTo(400);
        }
    }

    /** Who says that something of health applies is asked about it, and is not planned for before. */
    @Test
    void health_that_changed_is_taken_seriously(@TempDir Path folder) throws IOException {
        try (OpenedPage page = OpenedPage.small(folder).enter()) {
            String eater = "/start/eater/lifter-gaining";
            assertThat(page.get(eater + "/health").body()).contains("value=\"none\" checked");
            HttpResponse<String> none = page.post(eater + "/health");
            assertThat(none.statusCode()).isEqualTo(422);
            assertThat(none.body()).contains("value=\"gut_and_bones\"");
            assertThat(page.post(eater + "/health", "chosen", "eating").body())
                    .contains(eater + "/health.eating_disorder");
            assertThat(page.file("profiles/lifter-gaining.yaml")).containsPattern("\n  eating: yes");
        }
    }

    /** Chosen in a browser, for that browser; what is written has its unit, and the files stay in theirs. */
    @Test
    void units_by_choice(@TempDir Path folder) throws IOException {
        try (OpenedPage page = OpenedPage.small(folder).enter()) {
            page.post("/cupboard/counted", "food", "couscous", "grams", "350");
            assertThat(page.get("/cupboard").body()).contains("350 g");
            assertThat(page.get("/fridge/weight/lifter-gaining").body()).contains("In kg; or");
            assertThat(page.post("/start/units", "weight", "lb", "energy", "kJ", "food", "oz")
                            .body())
                    .contains("now uses these units");
            assertThat(page.get("/fridge/weight/lifter-gaining").body()).contains("In lb; or");
            assertThat(page.get("/cupboard").body()).contains("12.3 oz").doesNotContain("350 g,");
            page.post("/fridge/weighed", "eater", "lifter-gaining", "words", "163,5");
            page.post("/fridge/else", "eater", "lifter-gaining", "words", "out 900 kcal", "sure", "yes");
            assertThat(page.file("profiles/book.txt"))
                    .contains("weighed lifter-gaining 74.1624 kg", "counted 350 g couscous");
            assertThat(PageUnits.of("lb.kJ.oz").energy(BigDecimal.valueOf(900)))
                    .as("1 kcal is 4.184 kJ by definition")
                    .isEqualTo("3766 kJ");
            assertThat(PageUnits.of("<b>").energy(BigDecimal.valueOf(900))).isEqualTo("900 kcal");

            page.enter();
            assertThat(page.get("/fridge/weight/lifter-gaining").body())
                    .as("another browser")
                    .contains("In kg; or");
        }
    }
}
