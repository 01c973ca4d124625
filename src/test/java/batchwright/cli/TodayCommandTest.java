package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** today: by a plan that was kept, in a few lines. */
class TodayCommandTest {
    private static final String PLAN = """
            { "schema": "batchwright.plan/1", "cooking_day": "2026-11-25", "days": 2,
              "eaters": [ { "eater": "lifter-gaining", "days": [
                { "day": 1, "containers": [ { "dish": "lentil_ragu", "count": 2, "from": "fridge" } ],
                  "snacks": [ { "food": "banana", "measure": "medium", "count": 1, "grams": 118 } ],
                  "always": [], "totals": { "energy_kcal": 1500.4 } },
                { "day": 2, "containers": [ { "dish": "lentil_ragu", "count": 2, "from": "freezer" } ],
                  "snacks": [], "always": [], "totals": { "energy_kcal": 1400 } } ] } ],
              "batches": [ { "dish": "lentil_ragu",
                "ingredients": [ { "food": "white_rice", "grams": 300 } ],
                "fills": [ { "eater": "lifter-gaining", "containers": 4, "parts": [],
                  "per_container": { "energy_kcal": 700, "protein_g": 40 } } ] } ],
              "shopping": [ { "food": "white_rice", "pack_g": 907, "packs": 1, "cost_minor": 219 } ] }
            """;

    @TempDir
    Path here;

    @BeforeEach
    void kitchen() throws IOException {
        Folders.starter(here);
        keep("2026-11-25", PLAN);
    }

    private void keep(String name, String plan) throws IOException {
        Files.createDirectories(here.resolve("profiles/plans"));
        Files.writeString(here.resolve("profiles/plans/" + name + ".json"), plan);
    }

    private String today(String... more) {
        String[] args = new String[more.length + 1];
        args[0] = "today";
        System.arraycopy(more, 0, args, 1, more.length);
        Cli.Result result = Cli.in(here).run(args);
        assertThat(result.code()).isZero();
        assertThat(result.out().lines()).allMatch(line -> line.length() <= 80);
        return result.out();
    }

    private void book(String words) {
        assertThat(Cli.in(here).run(("book " + words).split(" ")).code()).isZero();
    }

    @Test
    void what_to_eat_cook_freeze_and_thaw() {
        assertThat(today().lines()).hasSizeLessThanOrEqualTo(10);
        assertThat(today())
                .contains("day 1 of 2 of the plan of Wed 25 Nov")
                .contains("Eat: lifter-gaining: 2 x lentil_ragu + 1 medium banana (118 g); 1500 kcal.")
                .contains(
                        "Cook: lentil_ragu.",
                        "Freeze: 2 x lentil_ragu.",
                        "Thaw tonight: 2 x lentil_ragu for lifter-gaining.")
                .contains("Tomorrow: lifter-gaining: 2 x lentil_ragu (frozen); 1400 kcal.");
    }

    @Test
    void what_is_done_is_no_longer_due() {
        book("bought list");
        book("cooked as planned");
        book("filled as planned");
        book("ate lifter-gaining 1 lentil_ragu");

        assertThat(flat(today()))
                .contains("Eat: lifter-gaining: 1 x lentil_ragu + 1 medium banana (118 g); 800 kcal.")
                .contains("Eaten so far: 700 of 1500 planned kcal.")
                .doesNotContain("Cook:", "Freeze:")
                .contains("Thaw tonight: 2 x lentil_ragu for lifter-gaining.");
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    /** Containers of 700 kcal, the rest of the plan is a banana: on paper. */
    @Test
    void what_was_eaten_otherwise_counts() {
        book("filled as planned");
        book("ate lifter-gaining out 900 kcal");
        assertThat(flat(today()))
                .contains("2 x lentil_ragu + 1 medium banana (118 g); 1500 kcal.")
                .contains("Eaten so far: 900 of 1500 planned kcal; with all of this 900 kcal more.");

        book("ate lifter-gaining nothing else");
        assertThat(flat(today()))
                .contains("Eaten: lifter-gaining: 900 of 1500 planned kcal, and that was all.")
                .contains("Tomorrow: lifter-gaining: 2 x lentil_ragu (frozen); 1400 kcal.")
                .doesNotContain("Eat: ");
        assertThat(flat(today("--date", "2026-11-26")))
                .contains("In no plan: lifter-gaining: 2 x lentil_ragu in the freezer until Sun 24 Jan 2027.");
    }

    /** Two of four are gone: the day with the earlier date is served first, the next one lacks. */
    @Test
    void containers_that_are_gone_are_told_of() {
        book("filled as planned");
        book("gave away 3 lentil_ragu of lifter-gaining");

        assertThat(flat(today()))
                .contains("Eat: lifter-gaining: 1 x lentil_ragu (frozen) + 1 medium banana (118 g); 800 kcal.")
                .contains("Planned, but not there: lifter-gaining: 1 x lentil_ragu today (700 kcal),"
                        + " 2 x lentil_ragu tomorrow (1400 kcal). For today: snack 700 --for lifter-gaining.")
                .doesNotContain("Tomorrow:", "Thaw tonight:");
    }

    @Test
    void a_food_for_snacks_that_is_gone_is_told_of() {
        assertThat(today()).doesNotContain("by the book");
        book("bought 200 g banana");
        assertThat(today()).doesNotContain("by the book");
        book("threw away 100 g banana");
        assertThat(today()).contains("Snacks of today and tomorrow take 118 g of banana, and by the book 64 g are");
    }

    /** Lines of an earlier command stand, and a line that was undone alone is not undone again. */
    @Test
    void all_lines_of_a_command_are_undone_at_once() throws IOException {
        book("ill lifter-gaining");
        book("bought 200 g banana");
        book("filled as planned");
        book("ate lifter-gaining as planned");
        Path file = here.resolve("profiles/book.txt");
        assertThat(Files.readString(file)).contains("nothing else   # 3 of 3");
        book("undo");
        String undone = Cli.in(here).run("book", "undo", "all").out();

        assertThat(undone).contains("undo 2026-11-25 ate lifter-gaining 118 g banana", "2 lentil_ragu");
        assertThat(undone).doesNotContain("nothing else", "filled");
        assertThat(Cli.in(here).run("book", "undo", "all").out()).contains("filled 2 lentil_ragu", "freezer until");
        assertThat(Cli.in(here).run("book", "undo", "all").out()).contains("bought 200 g banana");
        assertThat(Cli.in(here).run("book").out()).contains("ill lifter-gaining");
    }

    @Test
    void of_two_lots_alike_the_older_one_goes_first() {
        book("filled 1 lentil_ragu for lifter-gaining in fridge until 2026-11-27, 500 kcal --on 2026-11-25");
        book("filled 1 lentil_ragu for lifter-gaining in fridge until 2026-11-27, 600 kcal --on 2026-11-24");
        String eaten = Cli.in(here)
                .run("book ate lifter-gaining lentil_ragu".split(" "))
                .out();

        assertThat(eaten).contains("600 kcal");
    }

    @Test
    void what_was_thawed_is_no_longer_due() {
        book("filled as planned");
        book("thawed as planned");

        assertThat(today()).doesNotContain("Thaw tonight").contains("Tomorrow: lifter-gaining: 2 x lentil_ragu; 1400");
        assertThat(Cli.in(here).run("book").out())
                .contains("thawed 2 lentil_ragu of lifter-gaining until 2026-11-26")
                .contains("2 x lentil_ragu in the fridge, thawed, until Thu 26 Nov");
        Cli.Result again = Cli.in(here).run("book", "thawed", "as", "planned");
        assertThat(again.err()).contains("no plan has anything to thaw");
    }

    @Test
    void what_was_planned_is_written_once() {
        book("bought list");
        book("undo");
        for (String words : List.of("bought list", "cooked as planned", "filled as planned")) {
            book(words);
            Cli.Result again = Cli.in(here).run(("book " + words).split(" "));
            assertThat(again.code()).as(words).isEqualTo(2);
            assertThat(again.err()).contains("was written before, line", "--sure");
            book(words + " --sure");
        }
    }

    @Test
    void a_list_is_bought_before_the_cooking_day() {
        assertThat(Cli.in(here)
                        .run("book bought list --on 2026-11-24".split(" "))
                        .out())
                .contains("2026-11-24 bought 907 g white_rice");
        for (String day : List.of("2026-11-24", "2026-11-25")) {
            assertThat(Cli.in(here).run("book", "bought", "list", "--on", day).err())
                    .contains("was written before, line");
        }
        assertThat(Cli.in(here)
                        .run("book bought list --on 2026-11-20".split(" "))
                        .err())
                .contains("no plan was kept that holds 2026-11-20");
    }

    /** parent-holding avoids peanut. */
    @Test
    void what_an_eater_avoids_is_not_offered() {
        book("filled 1 peanut_stew for parent-holding in fridge until 2026-11-27 --sure");
        book("filled 1 chickpea_tagine for parent-holding in fridge until 2026-11-27");

        assertThat(today().replaceAll("\\s+", " "))
                .contains("Eat first: parent-holding: 1 x chickpea_tagine in the fridge until Fri 27 Nov.")
                .contains("1 x peanut_stew for parent-holding: avoided by this eater, so not for eating.");
    }

    @Test
    void containers_past_their_day_are_thrown_away() {
        book("filled 1 chickpea_tagine for lifter-gaining in fridge until 2026-11-24 --on 2026-11-21 --sure");

        assertThat(flat(today()))
                .contains("Throw away, past its day: 1 x chickpea_tagine for lifter-gaining in the fridge.");
    }

    @Test
    void without_a_plan_what_is_left_is_eaten_first() {
        book("filled 1 chickpea_tagine for desk-cutting in fridge until 2026-11-30 --sure");

        assertThat(today("--date", "2026-11-29"))
                .contains("no plan was kept for this day")
                .contains("Eat first: desk-cutting: 1 x chickpea_tagine in the fridge until Mon 30 Nov.");
    }

    @Test
    void a_dish_that_was_renamed_since_is_told_of() throws IOException {
        Path dishes = here.resolve("foods/dishes");
        Files.writeString(
                dishes.resolve("lentil_ragout.yaml"),
                Files.readString(dishes.resolve("lentil_ragu.yaml"))
                        .replace("dish: lentil_ragu", "dish: lentil_ragout"));
        Files.delete(dishes.resolve("lentil_ragu.yaml"));

        assertThat(today().replaceAll("\\s+", " "))
                .contains("There is no dish called lentil_ragu any more: was it renamed to lentil_ragout?");
        assertThat(Cli.in(here).run("book", "filled", "as", "planned").err())
                .contains("there is no dish called \"lentil_ragu\" any more");
    }

    @Test
    void of_two_plans_for_a_day_the_last_one_holds() throws IOException {
        keep("2026-11-25-2", PLAN.replace("1500.4", "1777"));

        assertThat(today()).contains("1777 kcal");
    }

    @Test
    void a_file_that_is_no_plan_is_named() throws IOException {
        keep("2026-11-26", "{}");

        Cli.Result result = Cli.in(here).run("today");

        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("2026-11-26.json is no plan");
    }

    @Test
    void json_for_scripts() throws IOException {
        var today = Shape.parse(today("--json"));

        assertThat(today.get("schema").asText()).isEqualTo("batchwright.today/1");
        assertThat(today.get("plan").get("day").asInt()).isEqualTo(1);
        assertThat(today.get("due")).hasSize(3);
    }
}
