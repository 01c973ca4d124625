package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Users with kitchens of their own, from their files to what they read. */
class KitchenWalksTest {
    private static final String DATE = "2026-11-25";

    @TempDir
    Path here;

    @BeforeEach
    void starter() {
        Folders.starter(here);
    }

    private Cli.Result run(String... args) {
        return Cli.in(here).run(args);
    }

    private Cli.Result plan(String... args) {
        List<String> all = new ArrayList<>(List.of("plan"));
        all.addAll(List.of(args));
        all.addAll(List.of("--date", DATE));
        return run(all.toArray(String[]::new));
    }

    private void write(String path, String text) throws IOException {
        Files.writeString(here.resolve(path), text);
    }

    /** One file edited, two commands: what needs an oven is left out, and two pots never stand on one burner. */
    @Test
    void one_burner_no_oven_and_a_small_budget() throws IOException {
        write("foods/kitchen.yaml", "burners: 1\nburner_kw: 0.7\novens: 0\npots: [3]\npans: [2.3]\n");

        assertThat(run("dishes").flat())
                .contains("Not in this kitchen, for want of oven: baked_oats, chicken_cornmeal_bake")
                .contains("for want of oven or air fryer: egg_muffins, greek_chicken_bowl");
        String[] wanted = {
            "parent-holding", "--days", "2", "--budget", "35", "--cook", "lentil_ragu,tuna_bean_pasta", "--json"
        };
        JsonNode schedule = Shape.parse(plan(wanted).out()).get("schedule");

        assertThat(schedule.get("burners").intValue()).isEqualTo(1);
        assertThat(schedule.get("shelves").intValue()).isZero();
        int free = 0;
        for (JsonNode step : schedule.get("steps")) {
            if (step.get("on").asText().equals("burner")) {
                assertThat(step.get("start").intValue()).isGreaterThanOrEqualTo(free);
                free = step.get("end").intValue();
            }
        }
        assertThat(plan("parent-holding", "--cook", "baked_oats").err())
                .contains("baked_oats cannot be cooked in this kitchen: a step needs oven");
    }

    /** A dish of one's own that a microwave oven cooks; beside it only what is eaten cold is left. */
    @Test
    void a_microwave_oven_only() throws IOException {
        write("foods/kitchen.yaml", "burners: 0\novens: 0\nmicrowave: 20\n");
        write("foods/dishes/microwave_rice.yaml", """
                dish: microwave_rice
                name: Rice with beans and spinach from the microwave oven
                kind: main
                fridge_days: 2
                freezes: yes
                reheat: "Microwave covered, stir half way, until steaming, 74 C (165 F) inside."
                parts:
                  - part: rice
                    least: 50 g
                    most: 140 g
                    mix:
                      white_rice: 80 g, boiled
                  - part: beans
                    least: 150 g
                    most: 400 g
                    mix:
                      canned_white_beans: 200 g
                      frozen_spinach: 80 g
                      olive_oil: 10 g
                staples: [salt 1.5 g]
                steps:
                  - do: "Cover the rice with twice its volume of salted water and cook it under a loose lid; let it rest."
                    with: [white_rice, salt]
                    uses: microwave
                    hand_work: {start: 1, white_rice: 1}
                    loads: {minutes: 22, grams: 400, of: white_rice}
                  - do: "Heat beans, spinach and oil together until steaming."
                    with: [canned_white_beans, frozen_spinach, olive_oil]
                    uses: microwave
                    hand_work: {start: 1, canned_white_beans: 1.75}
                    loads: {minutes: 7, grams: 600, of: beans}
                    after: nothing
                """);

        assertThat(run("check").out()).isEmpty();
        assertThat(run("dishes").flat()).contains("for want of burner: ").doesNotContain("for want of microwave");
        String dish = run("dishes", "microwave_rice").flat();

        assertThat(dish)
                .contains("microwave, the first 2 hands on", "loads of about", "one after another")
                .doesNotContain("Not in this kitchen");
        assertThat(run("dishes", "lentil_ragu").flat()).contains("Not in this kitchen: step 1 needs burner");
        JsonNode answer =
                Shape.parse(plan("parent-holding", "--days", "2", "--json").out());

        assertThat(answer.get("not_in_this_kitchen").has("burner")).isTrue();
        answer.get("batches")
                .forEach(batch -> assertThat(batch.get("dish").asText()).isIn("microwave_rice", "overnight_oats"));
    }

    /** Six eaters and one cook, thirty boxes; two cooks take no longer (for one batch, shorter: {@code LargeBatchTest}). */
    @Test
    void thirty_boxes_of_one_cook_and_of_two() throws IOException {
        String profile = Files.readString(here.resolve("profiles/parent-holding.yaml"));
        List<String> eaters = new ArrayList<>();
        for (int i = 1; i <= 6; i++) {
            write("profiles/eater" + i + ".yaml", profile.replaceFirst("(?m)^eater: .*$", "eater: eater" + i));
            eaters.add("eater" + i);
        }
        List<String> args = new ArrayList<>(eaters);
        args.addAll(List.of("--days", "3", "--cook", "lentil_ragu,tuna_bean_pasta", "--seconds", "10", "--json"));
        JsonNode one = Shape.parse(plan(args.toArray(String[]::new)).out()).get("schedule");
        write("foods/kitchen.yaml", "cooks: 2\n");
        JsonNode two = Shape.parse(plan(args.toArray(String[]::new)).out()).get("schedule");

        int handsOn = one.get("hands_on_minutes").intValue();
        assertThat(handsOn).isLessThan(one.get("minutes").intValue());
        assertThat(two.get("hands_on_minutes").intValue()).isEqualTo(handsOn);
        assertThat(two.get("minutes").intValue())
                .isLessThanOrEqualTo(one.get("minutes").intValue());
        assertThat(one.get("stands_too_long")).isNotNull();
        boolean divided = false;
        for (JsonNode step : one.get("steps")) {
            divided |= !step.get("loads").isNull();
        }
        assertThat(divided).as("some step goes in loads").isTrue();
    }

    /** The same dish with minutes only: it is read, planned, and doubted by check alone. */
    @Test
    void a_dish_with_minutes_only_is_doubted() throws IOException {
        Path ragu = here.resolve("foods/dishes/lentil_ragu.yaml");
        Files.writeString(
                ragu,
                Files.readString(ragu)
                        .replaceAll("(?m)^    (with|hand_work|loads|power|pot|or):.*\\n", "")
                        .replaceAll("(?m)^      (uses|loads):.*\\n", "")
                        .replaceAll("(?m)^    by_itself: .*\\n", "")
                        .replaceAll("(?m)^(  - do: .*)$", "$1\n    minutes: 20\n    hands_on: 5"));

        assertThat(run("check").err().replaceAll("\\s+", " "))
                .contains("lentil_ragu.yaml: warning: the minutes of steps 1, 2, 3, 4, 5, 6 are for 5 containers only");
        Cli.Result plan = plan("parent-holding", "--days", "2", "--cook", "lentil_ragu");

        assertThat(plan.err()).doesNotContain("5 containers only");
        assertThat(plan.flat())
                .contains("Minutes of lentil_ragu are written for about 5 containers")
                .doesNotContain("Wash up");
    }

    /** Clock times in text and JSON, without a calendar. */
    @Test
    void cooking_starts_at_a_time_of_day() {
        String[] wanted = {"parent-holding", "--days", "2", "--cook", "lentil_ragu", "--cook-at", "10:00"};
        String text = plan(wanted).flat();

        assertThat(text).contains("10:00 ", "Into step 1: ", " g salt");
        String[] json = Arrays.copyOf(wanted, wanted.length + 1);
        json[wanted.length] = "--json";
        assertThat(Shape.parse(plan(json).out()).get("schedule").get("cook_at").asText())
                .isEqualTo("10:00");
    }

    /** As many minutes as the cheapest plan takes change nothing; fewer cost more or are not to be had, and then that is a clash. */
    @Test
    void minutes_are_a_limit() {
        String[] wanted = {"parent-holding", "--days", "2", "--cook", "lentil_ragu,soy_garlic_beef", "--json"};
        JsonNode free = Shape.parse(plan(wanted).out());
        int hands = free.get("schedule").get("hands_on_minutes").intValue();
        JsonNode same = limited(wanted, hands);
        JsonNode less = limited(wanted, 10);

        assertThat(same.get("cost_minor")).isEqualTo(free.get("cost_minor"));
        assertThat(same.get("schedule").get("hands_on_minutes").intValue()).isLessThanOrEqualTo(hands);
        assertThat(same.get("audit").toString()).contains("hands-on minutes");
        assertThat(less.get("status").asText()).isEqualTo("no_plan");
        assertThat(less.get("clashes").toString()).contains("hands-on minutes", "--most-minutes ");
    }

    private JsonNode limited(String[] wanted, int minutes) {
        List<String> args = new ArrayList<>(List.of(wanted));
        args.addAll(List.of("--most-minutes", Integer.toString(minutes)));
        return Shape.parse(plan(args.toArray(String[]::new)).out());
    }
}
