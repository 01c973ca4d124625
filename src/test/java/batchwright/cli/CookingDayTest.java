package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What --date changes: use-by dates in the pantry and the age of prices count from it. The starter prices are of 2026-11-21. */
class CookingDayTest {
    @TempDir
    Path here;

    @BeforeEach
    void files() throws IOException {
        Folders.starter(here);
        Folders.keepDishes(here, "lentil_ragu"); // so that it is quickly proven
        Files.delete(here.resolve("profiles/desk-cutting.yaml")); // it avoids other dishes
        Files.writeString(here.resolve("profiles/pantry.csv"), """
                food,grams,note,use_by
                spinach,120,bag,2026-11-25
                frozen_broccoli,400 g,bag,2026-12-30
                tofu_firm,1 block,in its water,2026-11-26
                """);
    }

    private Cli.Result plan(String... more) {
        String[] args = new String[5 + more.length];
        System.arraycopy(new String[] {"plan", "parent-holding", "--days", "2", "--dishes=1"}, 0, args, 0, 5);
        System.arraycopy(more, 0, args, 5, more.length);
        return Cli.in(here).run(args);
    }

    @Test
    void today_is_the_day_when_none_is_named() {
        assertThat(plan().flat())
                .isEqualTo(plan("--date", Cli.TODAY.toString()).flat().replace(" --date " + Cli.TODAY, ""));
        assertThat(Shape.parse(plan("--json").out()).get("cooking_day").textValue())
                .isEqualTo("2026-11-25");
        assertThat(Shape.parse(plan("--json", "--date", "2026-11-24").out())
                        .get("cooking_day")
                        .textValue())
                .isEqualTo("2026-11-24");
    }

    @Test
    void what_the_plan_leaves_is_named_to_be_used_up() {
        Cli.Result result = plan();
        JsonNode useUp = Shape.parse(plan("--json").out()).get("use_up");

        assertThat(result.code()).isZero();
        assertThat(result.flat())
                .contains("Use up, besides this plan: 120 g spinach")
                .contains(" by 2026-11-25; ")
                .doesNotContain("Past its date")
                .doesNotContain("Stale");
        assertThat(useUp).hasSize(2);
        assertThat(useUp.get(0).get("food").textValue()).isEqualTo("spinach");
        assertThat(useUp.get(1).get("use_by").textValue()).isEqualTo("2026-11-26");
    }

    @Test
    void past_its_date_it_is_not_used() {
        Cli.Result result = plan("--date", "2026-11-26");
        JsonNode json = Shape.parse(plan("--date", "2026-11-26", "--json").out());

        assertThat(result.flat()).contains("Past its date, not used: 120 g spinach");
        assertThat(json.get("past_use_by")).hasSize(1);
        assertThat(json.get("past_use_by").get(0).get("grams").intValue()).isEqualTo(120);
        assertThat(json.get("use_up")).hasSize(1);
    }

    /** 2026-11-21 and 180 days are 2027-05-20. */
    @Test
    void stale_prices_are_named_once_for_all() {
        Cli.Result fresh = Cli.in(here).run("check", "--date", "2027-05-20");
        Cli.Result check = Cli.in(here).run("check", "--date", "2027-05-21");

        assertThat(fresh.both()).isEmpty();
        assertThat(check.code()).isZero();
        assertThat(check.err().lines().filter(line -> line.contains(": warning:")))
                .singleElement()
                .asString()
                .contains(
                        "foods/shop.csv: warning: ",
                        "prices were seen more than 180 days before 2027-05-21; the oldest: ");
        assertThat(plan("--date", "2027-05-20").flat()).doesNotContain("Stale");
        assertThat(plan("--date", "2027-05-21").flat())
                .contains("Stale prices, seen more than 180 days before 2027-05-21: ")
                .contains("lentils, dry 2026-11-21");
        assertThat(Shape.parse(plan("--date", "2027-05-21", "--json").out())
                        .at("/shopping/0/stale")
                        .booleanValue())
                .isTrue();
        assertThat(Cli.in(here).run("foods", "lentils", "--date", "2027-05-21").flat())
                .contains("2026-11-21 (stale)");
        assertThat(Cli.in(here).run("foods", "yogurt", "--date", "2027-05-21").flat())
                .contains("(stale)", "stale: the price was seen more than 180 days before 2027-05-21.");
        assertThat(Cli.in(here).run("foods", "yogurt").out()).doesNotContain("stale");
    }

    @Test
    void prices_seen_after_the_day_are_named() {
        assertThat(Cli.in(here).run("check", "--date", "2026-11-20").err())
                .contains("prices were seen after 2026-11-20");
        assertThat(plan("--date", "2026-11-20").flat()).contains("Prices seen after the cooking day, 2026-11-20: ");
    }

    @Test
    void foods_shows_lots_and_how_they_are_sold() throws IOException {
        Path shop = here.resolve("foods/shop.csv");
        Files.writeString(
                shop,
                Files.readString(shop).stripTrailing()
                        + "\nspinach,corner market,loose,1000,8.99,USD,2026-11-21,invented,,50"
                        + "\nspinach,warehouse,four cans,4 x 380,5.99,USD,2026-11-21,invented,210\n");

        Cli.Result spinach = Cli.in(here).run("foods", "spinach", "--date", "2026-11-26");
        JsonNode packs = Shape.parse(
                        Cli.in(here).run("foods", "spinach", "--json").out())
                .at("/foods/0/packs");

        assertThat(spinach.flat())
                .contains("At home: 0 g; 120 g past its date, 2026-11-25, not counted.")
                .contains("loose, in steps of")
                .contains("four cans, 4 x 380", "drained each)");
        assertThat(packs.get(1).get("loose").booleanValue()).isTrue();
        assertThat(packs.get(1).get("grams").intValue()).isEqualTo(1000);
        assertThat(packs.get(1).get("unit_g").intValue()).isEqualTo(50);
        assertThat(packs.get(2).get("units").intValue()).isEqualTo(4);
        assertThat(packs.get(2).get("unit_drained_g").intValue()).isEqualTo(210);
    }
}
