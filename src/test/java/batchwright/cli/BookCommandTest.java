package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is typed in a kitchen: short when it fits, refused with a reason when it does not, and never lost. */
class BookCommandTest {
    private static final String EATER = "lifter-gaining";

    @TempDir
    Path here;

    @BeforeEach
    void kitchen() throws IOException {
        Folders.keepDishes(Folders.starter(here), "lentil_ragu");
    }

    private Cli.Result book(String words, String... options) {
        String[] args =
                ("book " + words + " " + String.join(" ", options)).strip().split(" +");
        return Cli.in(here).run(args);
    }

    private String text() throws IOException {
        Path file = here.resolve("profiles/book.txt");
        return Files.exists(file) ? Files.readString(file) : "";
    }

    private void refused(String words, String... says) throws IOException {
        String before = text();
        Cli.Result result = book(words);

        assertThat(result.code()).as(words).isEqualTo(2);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).contains(says);
        assertThat(text().replaceFirst("(?s)^# batchwright.*?undone by another\\.\n", ""))
                .isEqualTo(before.replaceFirst("(?s)^# batchwright.*?undone by another\\.\n", ""));
    }

    @Test
    void a_line_is_written_after_those_before() throws IOException {
        book("weighed lifter-gaining 74.2kg");
        Cli.Result second = book("ill lifter-gaining", "--on", "yesterday");

        assertThat(second.code()).isZero();
        assertThat(text())
                .startsWith("# batchwright book 1\n")
                .endsWith("2026-11-25 weighed lifter-gaining 74.2 kg\n2026-11-24 ill lifter-gaining\n");
    }

    @Test
    void what_cannot_be_is_refused_and_nothing_is_written() throws IOException {
        refused("weighed lifter-gaining 7.42 kg", "7.42 kg is less than 25 kg");
        refused("weighed lifter-gaining 160 kg", "the profile says 74.0 kg");
        refused("weighed lifter-gaining 163 kg", "Is it in pounds?");
        refused("weighed lifter-gaining 74", "is no body weight");
        refused("weighed lifter-gaining 33.6 kg", "Is it in kilograms?");
        refused("weighed lifter 74 kg", "nearest: lifter-gaining");
        refused("ate lifter-gaining lentil_ragu", "there is no container of lentil_ragu for lifter-gaining left");
        refused("ate lifter-gaining lentil_rag", "nearest: lentil_ragu");
        refused("ate lifter-gaining 100 g banena", "nearest: banana");
        refused("ate lifter-gaining as planned", "no plan was kept that holds 2026-11-25");
        refused("cooked as planned", "no plan was kept");
        refused("bought list", "To keep a plan: plan EATER --keep");
        refused("threw away 500 g couscous", "500 g of couscous more than there was");
        refused("weighed lifter-gaining 74 kg --on 2027-11-25", "is a day to come");
        refused("undo", "there is nothing to undo");
        refused("undo 7", "line 7 of the book is none that stands");
        refused("cooked lentil_ragu", "nothing says what went into lentil_ragu", "from 300 g FOOD");
        refused("creatine lifter-gaining stopped", "no line says that lifter-gaining takes creatine");
        refused("snored lifter-gaining", "is nothing that the book knows");
        refused("filled lentil_ragu --pot 1.9kg", "the weight of the full pot");
        refused("filled lentil_ragu --pot-with-lid 1kg --pot 1.9kg", "weighs no more than the empty one");
    }

    @Test
    void what_seems_wrong_is_written_by_somebody_who_is_sure() throws IOException {
        assertThat(book("weighed lifter-gaining 160 kg", "--sure").code()).isZero();
        assertThat(text()).endsWith("weighed lifter-gaining 160 kg\n");
    }

    @Test
    void twice_a_day_is_asked_about() throws IOException {
        book("weighed lifter-gaining 74.2 kg");
        refused("weighed lifter-gaining 74.4 kg", "was weighed before on this day");
    }

    @Test
    void a_container_is_not_eaten_twice() throws IOException {
        book("filled 2 lentil_ragu for lifter-gaining in fridge until 2026-11-28, 640 kcal");

        Cli.Result both = book("ate lifter-gaining 2 lentil_ragu");
        assertThat(both.out()).contains("ate lifter-gaining 2 lentil_ragu, 1280 kcal");
        refused("ate lifter-gaining lentil_ragu", "there is no container of lentil_ragu");
    }

    /** What is written in between for an earlier day can make a later line wrong: its number is told. */
    @Test
    void a_line_for_an_earlier_day_must_fit_what_came_later() throws IOException {
        book("filled 1 lentil_ragu for lifter-gaining in fridge until 2026-11-26", "--on 2026-11-23");
        book("ate lifter-gaining lentil_ragu");

        Cli.Result earlier = book("gave away 1 lentil_ragu of lifter-gaining", "--on 2026-11-24");

        assertThat(earlier.code()).isEqualTo(2);
        assertThat(earlier.err()).contains("(line 4 of the book)");
    }

    /** A banana of 118 g has 105 kcal (SR28 09040: 89 kcal in 100 g). */
    @Test
    void a_household_measure_becomes_grams_and_energy() throws IOException {
        book("bought 3 x 184 g banana for 0.87");
        book("ate lifter-gaining 1 medium banana");

        assertThat(text()).endsWith("ate lifter-gaining 118 g banana, 105 kcal\n");
    }

    @Test
    void undo_takes_back_the_last_line_or_one_that_is_named() throws IOException {
        book("ill lifter-gaining");
        book("travel lifter-gaining");
        book("undo");
        book("undo 3");

        assertThat(text())
                .endsWith("undo 2026-11-25 travel lifter-gaining\n2026-11-25 undo 2026-11-25 ill lifter-gaining\n");
        refused("undo", "there is nothing to undo");
    }

    @Test
    void a_step_in_an_edited_book_is_held_to_its_limits() throws IOException {
        book("ill lifter-gaining");
        Files.writeString(here.resolve("profiles/book.txt"), """
                # batchwright book 1
                2026-10-01 adopted lifter-gaining 2900 kcal
                2026-10-15 adopted lifter-gaining 3050 kcal
                2026-10-20 adopted lifter-gaining 3000 kcal
                2026-11-10 adopted lifter-gaining 3200 kcal
                """);
        String told = Cli.in(here).run("check").err();

        assertThat(told)
                .contains("book.txt:4:", "a step 5 days after that of 2026-10-15", "at least 14 days")
                .contains("book.txt:5:", "a step of 200 kcal from 3000 kcal of 2026-10-20", "at most 150 kcal")
                .doesNotContain("book.txt:2:", "book.txt:3:");
    }

    @Test
    void the_pantry_and_snacks_follow_from_the_book() throws IOException {
        book("bought 500 g peanut_butter for 2.99");

        assertThat(Cli.in(here).run("snack", "200", "--from-home").out()).contains("peanut butter");
        assertThat(book("").out()).contains("500  peanut butter");

        book("threw away 500 g peanut_butter");
        assertThat(Cli.in(here).run("snack", "200", "--from-home").err()).contains("no snack is at home");
    }

    @Test
    void check_finds_what_contradicts_itself_with_line_numbers() throws IOException {
        Files.writeString(here.resolve("profiles/book.txt"), """
                # batchwright book 1
                2026-11-20 filled 1 lentil_ragu for lifter-gaining in fridge until 2026-11-24
                2026-11-21 ate lifter-gaining 2 lentil_ragu
                2026-11-21 weighed lifter-gaining 74 kg
                2026-11-22 weighed lifter-gaining 84 kg
                2026-11-22 cooked old_name from 300 g white_rice
                2027-11-22 ill lifter-gaining
                """);

        Cli.Result check = Cli.in(here).run("check");

        assertThat(check.err())
                .contains(
                        "book.txt:3:1: warning: there is only 1 of lentil_ragu for lifter-gaining left",
                        "book.txt:5:1: warning: 84 kg, and it was 74 kg on 2026-11-21",
                        "book.txt:6:1: warning: there is no dish called \"old_name\"",
                        "book.txt:6:1: warning: 300 g of white_rice more than there was",
                        "book.txt:7:1: warning: 2027-11-22 is a day to come");
    }

    @Test
    void a_line_that_was_cut_off_is_told_of_and_kept() throws IOException {
        Path file = here.resolve("profiles/book.txt");
        Files.writeString(file, "# batchwright book 1\n2026-11-24 ate lifter-gaining out 9");

        Cli.Result result = book("ill lifter-gaining");

        assertThat(result.code()).isZero();
        assertThat(result.err()).contains("book.txt:2:1: warning: the last line has no end");
        assertThat(text())
                .isEqualTo(
                        "# batchwright book 1\n2026-11-24 ate lifter-gaining out 9 # torn\n2026-11-25 ill lifter-gaining\n");
        assertThat(Cli.in(here).run("check").err()).contains("book.txt:2:1: warning: this line was cut off");
    }

    @Test
    void a_book_of_a_newer_program_is_left_alone() throws IOException {
        Files.writeString(here.resolve("profiles/book.txt"), "# batchwright book 2\nsomething new\n");

        refused("ill lifter-gaining", "the book is written by a newer version of the program");
    }

    @Test
    void starter_files_have_no_book() {
        Cli.Result result = Cli.in(here.resolve("profiles")).run("book", "ill", EATER);

        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("there is no kitchen of your own here", "init DIR");
    }

    @Test
    void json_for_scripts() throws IOException {
        assertThat(Shape.parse(book("ill lifter-gaining", "--json").out())
                        .get("written")
                        .get(0)
                        .asText())
                .isEqualTo("2026-11-25 ill lifter-gaining");
        assertThat(Shape.parse(book("", "--json").out())
                        .get("last_lines")
                        .get(0)
                        .get("line")
                        .asInt())
                .isEqualTo(3);
    }

    @Test
    void everything_about_an_eater_can_be_copied_out_and_taken_away() throws IOException {
        book("weighed lifter-gaining 74.2 kg");
        book("weighed desk-cutting 92 kg", "--sure");
        book("filled 2 lentil_ragu for lifter-gaining in fridge until 2026-11-28");
        book("undo");
        book("bought 500 g white_rice for 1");

        Cli.Result export = book("", "--export", EATER);
        Map<String, String> before = Folders.content(here);
        Cli.Result unsure = book("", "--remove", EATER);
        assertThat(unsure.code()).isEqualTo(2);
        assertThat(Folders.content(here)).isEqualTo(before);
        Cli.Result removed = book("", "--remove", EATER, "--sure");

        assertThat(export.out())
                .contains("eater: lifter-gaining", "weighed lifter-gaining 74.2 kg")
                .doesNotContain("92 kg");
        assertThat(removed.out()).contains("profiles/lifter-gaining.yaml", "3 lines of");
        assertThat(text())
                .contains("weighed desk-cutting 92 kg", "bought 500 g white_rice")
                .doesNotContain(EATER);
        assertThat(here.resolve("profiles/lifter-gaining.yaml")).doesNotExist();
    }

    /** What is past its last day is never offered for eating: not as a day, not in place of another container. */
    @Test
    void a_plan_throws_away_what_is_past_its_last_day() {
        book("filled 2 lentil_ragu for lifter-gaining in fridge until 2026-11-24, 700 kcal", "--on 2026-11-23");
        book("filled 1 lentil_ragu for lifter-gaining in fridge until 2026-11-25, 700 kcal");

        Cli.Result plan = Cli.in(here).run("plan", EATER, "--days", "2", "--seconds", "1");

        assertThat(plan.flat())
                .contains(
                        "no whole day for everybody: 1 x lentil_ragu for lifter-gaining until Wed 25 Nov. Eat it by then")
                .contains("Past its last day, to be thrown away: 2 x lentil_ragu for lifter-gaining until Tue 24 Nov.")
                .doesNotContain("EAT FIRST");
    }

    /** parent-holding avoids peanut. */
    @Test
    void what_an_eater_avoids_is_in_doubt_wherever_it_reaches_them() throws IOException {
        Folders.keepDishes(Folders.starter(here), "peanut_stew");
        String filled = "filled 2 peanut_stew for %s in fridge until 2026-11-27";
        book(filled.formatted("desk-cutting"));
        String avoided = "parent-holding avoids peanut";

        refused(filled.formatted("parent-holding"), avoided, "To write it all the same: --sure");
        refused("ate parent-holding 1 peanut_stew of desk-cutting", avoided);
        book("bought 500 g peanut_butter");
        refused("ate parent-holding 20 g peanut_butter", avoided);
        assertThat(book("ate desk-cutting 1 peanut_stew").code()).isZero();
        assertThat(book(filled.formatted("parent-holding"), "--sure").code()).isZero();

        assertThat(Cli.in(here).run("check").err()).contains("book.txt:6:1: warning: " + avoided);
    }

    @Test
    void containers_of_a_dish_that_the_eater_avoids_are_never_eaten_first() throws IOException {
        Folders.keepDishes(Folders.starter(here), "peanut_stew", "lentil_ragu");
        book("filled 2 peanut_stew for parent-holding in fridge until 2026-11-27, 700 kcal", "--sure");
        book("filled 2 lentil_ragu for parent-holding in fridge until 2026-11-28, 700 kcal");

        Cli.Result plan = Cli.in(here).run("plan", "parent-holding", "--days", "1", "--seconds", "1");

        assertThat(plan.flat()).contains("EAT FIRST", "2 x lentil_ragu").doesNotContain("x peanut_stew");
    }

    /** lentil_ragu keeps 4 days in the fridge, the day it is filled being day 1. */
    @Test
    void a_last_day_that_cannot_be_is_in_doubt() throws IOException {
        String filled = "filled 1 lentil_ragu for lifter-gaining in %s until %s";
        refused(filled.formatted("fridge", "2026-11-29"), "more than the 4 days that lentil_ragu keeps");
        refused(filled.formatted("fridge", "2027-11-28"), "Until 2026-11-28 at the latest");
        refused(filled.formatted("fridge", "2026-11-24"), "is before the day of the line");
        refused(filled.formatted("freezer", "2025-12-01"), "is before the day of the line");
        refused(filled.formatted("freezer", "2027-11-26"), "more than the 365 days");
        refused("bought 500 g white_rice until 2025-12-01", "is before the day of the line");

        assertThat(book(filled.formatted("fridge", "2026-11-28")).code()).isZero();
        refused("froze lentil_ragu of lifter-gaining until 2027-11-26", "more than the 365 days");
        refused(
                "froze 2 lentil_ragu of lifter-gaining",
                "there is only 1 of lentil_ragu for lifter-gaining left in the");
        assertThat(book("froze lentil_ragu of lifter-gaining").out())
                .contains("froze 1 lentil_ragu of lifter-gaining until 2027-01-24");
        refused("thawed lentil_ragu of lifter-gaining until 2026-11-28", "more than the 2 days");
        assertThat(book("thawed lentil_ragu of lifter-gaining").out()).contains("until 2026-11-26");
        refused("froze lentil_ragu of lifter-gaining", "was thawed before", "Never freeze it");
        book("ate lifter-gaining lentil_ragu");
        assertThat(book(filled.formatted("fridge", "2026-11-28")).code()).isZero();
        assertThat(book(filled.formatted("freezer", "2027-11-25")).code()).isZero();
        assertThat(book("bought 500 g white_rice until 2026-11-25").code()).isZero();
        assertThat(Cli.in(here).run("check").err()).doesNotContain("until 20");
    }
}
