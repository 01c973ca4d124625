package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Walks of people who could be hurt: files in, text out. The advice and its sources stand in
 * src/test/resources/published/food_hazards.csv.
 */
class HazardWalksTest {
    private static final String DISH = """
            dish: %s
            name: %s
            kind: main
            fridge_days: 3
            freezes: yes
            reheat: "%s"
            parts:
              - part: all
                least: 200 g
                most: 700 g
                mix:
                  %s
            staples: [salt]
            steps:
              - do: "%s"
                minutes: %s
                hands_on: 5
              - do: "Fill the containers."
                minutes: 5
                hands_on: yes
                fills: yes
            """;

    private static final String HOT = "Heat until steaming, 74 C (165 F) inside.";
    private static final String BEANS = "kidney_beans: 60 g, boiled\n      crushed_tomatoes: 200 g";
    private static final String BOWL =
            "rolled_oats: 70 g\n      greek_yogurt: 150 g\n      frozen_strawberries: 80 g\n      frozen_blueberries: 40 g";

    @TempDir
    Path here;

    @BeforeEach
    void init() {
        assertThat(run("init", ".").code()).isZero();
    }

    private Cli.Result run(String... args) {
        return Cli.in(here).run(args);
    }

    private void dish(String id, String reheat, String mix, String step, String minutes) throws IOException {
        Files.writeString(
                here.resolve("foods/dishes/" + id + ".yaml"),
                DISH.formatted(id, "My " + id, reheat, mix, step, minutes));
    }

    private static String caution(JsonNode answer, String code) {
        return StreamSupport.stream(answer.findValue("cautions").spliterator(), false)
                .filter(caution -> caution.get("code").textValue().equals(code))
                .map(caution -> caution.get("text").textValue())
                .reduce("", String::concat);
    }

    private static double grams(JsonNode plan, String food) {
        return StreamSupport.stream(plan.get("batches").spliterator(), false)
                .flatMap(batch -> StreamSupport.stream(batch.get("ingredients").spliterator(), false))
                .filter(line -> line.get("food").textValue().equals(food))
                .mapToDouble(line -> line.get("grams").doubleValue())
                .sum();
    }

    /** EFSA: 1.3 ug per kg and week, here 64 kg; light tuna: 0.128 ug per g (FDA). */
    @Test
    void much_tuna() throws IOException {
        String[] asked = {"plan", "parent-holding", "--days", "5", "--cook", "tuna_bean_pasta"};
        Cli.Result text = run(asked);
        JsonNode plan = Shape.parse(run("plan", "parent-holding", "--days", "5", "--cook", "tuna_bean_pasta", "--json")
                .out());
        double tuna = grams(plan, "canned_tuna");
        assertThat(tuna).isGreaterThan(500);

        assertThat(caution(plan, "fish_mercury"))
                .contains(Math.round(tuna) + " g of light tuna", " in 5 days")
                .contains("about " + Math.round(tuna * 7 / 5 * 0.128) + " ug of mercury a week")
                .contains("for 64 kg is " + Math.round(1.3 * 64) + " ug");
        assertThat(caution(plan, "fish_servings")).contains("2-3 servings of 113 g a week", "may become pregnant");
        assertThat(text.flat()).containsOnlyOnce("ug of mercury a week by average contents");
        assertThat(run("plan", "parent-holding", "--days", "2", "--cook", "lentil_ragu")
                        .flat())
                .doesNotContain("mercury", "may become pregnant");
    }

    /** Ireland, Denmark: boil for 1 minute. */
    @Test
    void raw_frozen_berries() throws IOException {
        dish("berry_bowl", "Eat cold.", BOWL, "Stir it all, with the berries on top, and leave it overnight.", "5");
        String says = "no step heats them";

        assertThat(run("check").both()).contains(says).contains("berry_bowl.yaml");
        assertThat(run("dishes", "berry_bowl").flat()).contains(says, "boil them for 1 minute");
        assertThat(caution(
                        Shape.parse(run("dishes", "berry_bowl", "--kcal", "500", "--json")
                                .out()),
                        "frozen_berries.berry_bowl"))
                .contains("strawberries, frozen and blueberries, frozen");

        dish("berry_bowl", "Eat cold.", BOWL, "Boil the berries for 1 minute; stir in the rest, cold.", "9");
        assertThat(run("check").both()).doesNotContain(says);
        assertThat(run("dishes", "berry_bowl").flat()).doesNotContain(says);
    }

    /** Soaked, then boiled for 10 minutes, never raw into a slow cooker. */
    @Test
    void dried_kidney_beans_and_a_slow_cooker() throws IOException {
        dish("chili", HOT, BEANS, "Soak the beans overnight; cook all in the slow cooker for 8 hours.", "480");
        Cli.Result refused = run("check");
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.both())
                .contains("chili.yaml:8:11: error: red kidney beans, dry: dried beans go into a slow cooker");

        dish("chili", HOT, BEANS, "Boil the beans for 2 minutes, then put them into the slow cooker.", "480");
        assertThat(run("check").code()).isEqualTo(2);

        dish("chili", HOT, BEANS, "Boil the beans hard for 10 minutes, then put them into the slow cooker.", "480");
        Cli.Result right = run("check");
        assertThat(right.code()).isZero();
        assertThat(right.both()).doesNotContain("boil", "beans");

        dish("chili", HOT, BEANS, "Cook the beans with the tomatoes.", "480\n    uses: slow_cooker");
        assertThat(run("check").code()).isEqualTo(2);

        dish("chili", HOT, BEANS, "Simmer the beans with the tomatoes.", "40");
        Cli.Result doubted = run("check");
        assertThat(doubted.code()).isZero();
        assertThat(doubted.both()).contains("chili.yaml", "boil them hard in fresh water for at least 10 minutes");
        assertThat(run("dishes", "chili").flat())
                .contains("no step says that they are boiled", "before they go into any");
    }

    /** CDC and FDA: from 65 years on heat smoked fish to 74 C, or leave it out. */
    @Test
    void aged_seventy_with_smoked_salmon() throws IOException {
        Path labels = here.resolve("foods/labels.csv");
        Files.writeString(
                labels,
                Files.readString(labels).stripTrailing()
                        + "\nsmoked_salmon,smoked salmon,fish,eu,1 slice = 25 g,188 kJ / 45 kcal,2.5,0.5,0.1,0.1,0,5.8,0.75 g salt,,,,,,,,yes,,fish,mine\n");
        Files.writeString(
                here.resolve("foods/shop.csv"),
                Files.readString(here.resolve("foods/shop.csv")).stripTrailing()
                        + "\nsmoked_salmon,corner market,pack,200,4.00,USD,2026-11-21,mine\n");
        Path profile = here.resolve("profiles/parent-holding.yaml");
        String written =
                Files.readString(profile).replaceFirst("\nalways:\n( .*\n)+", "\nalways: [1 slice smoked_salmon]\n");
        Files.writeString(profile, written);

        assertThat(listeria()).isEmpty();

        Files.writeString(profile, written.replaceFirst("age: \\d+", "age: 70"));
        assertThat(listeria())
                .contains("smoked salmon: with a higher risk from listeria leave this out")
                .contains("74 C (165 F) inside");
    }

    private String listeria() {
        Cli.Result plan =
                run("plan", "parent-holding", "--days", "1", "--cook", "lentil_ragu,tuna_bean_pasta", "--json");
        assertThat(plan.code()).as(plan.both()).isIn(0, 4);
        JsonNode json = Shape.parse(plan.out());
        assertThat(json.at("/eaters/0/days/0/always/0/food").textValue()).isEqualTo("smoked_salmon");
        return caution(json, "listeria_foods");
    }

    /** WHO: 5 g a day. Salt is 2.5 times sodium (Regulation (EU) 1169/2011); 5 g per kg of food at most: common practice. */
    @Test
    void salt_to_add_for_the_batch_and_what_is_left() {
        JsonNode plan = Shape.parse(run("plan", "parent-holding", "--days", "3", "--cook", "lentil_ragu", "--json")
                .out());
        double days = 0;
        for (JsonNode day : plan.at("/eaters/0/days")) {
            days += day.at("/totals/sodium_mg").doubleValue() * 0.0025;
        }
        JsonNode fill = plan.at("/batches/0/fills/0");
        double containers = fill.get("containers").doubleValue();
        double kg = 0;
        for (JsonNode part : fill.get("parts")) {
            kg += part.get("cooked_g").doubleValue() * containers / 1000;
        }
        double held = fill.at("/per_container/sodium_mg").doubleValue() * containers * 0.0025;
        double most = Math.max(0, Math.min(15 - days, 5 * kg - held));

        assertThat(plan.at("/batches/0/salt_to_add_most_g").doubleValue()).isCloseTo(Math.floor(most), within(0.0));
        double salt = plan.at("/batches/0/salt_g").doubleValue();
        assertThat(salt).isLessThanOrEqualTo(Math.floor(most));
        assertThat(StreamSupport.stream(plan.at("/schedule/steps").spliterator(), false)
                        .flatMap(step -> StreamSupport.stream(step.get("with").spliterator(), false))
                        .filter(amount -> amount.path("staple").asText().equals("salt"))
                        .mapToDouble(amount -> amount.get("grams").doubleValue())
                        .sum())
                .isCloseTo(salt, within(0.1));
        assertThat(caution(plan, "salt_to_add")).contains("at most " + (int) most + " g");
        assertThat(caution(plan, "salt")).contains("WHO advises less than 5 g a day");
        assertThat(caution(plan, "hot_boxes"))
                .contains(String.format(Locale.ROOT, "%.1f kg", kg), "about 2 kg of hot food at once");

        assertThat(plan.get("leftovers")).isNotEmpty().allSatisfy(left -> {
            assertThat(left.get("becomes").textValue()).isIn("stock", "waste");
            assertThat(StreamSupport.stream(plan.get("shopping").spliterator(), false)
                            .filter(line -> line.get("food").equals(left.get("food")))
                            .mapToDouble(line -> line.get("left_g").doubleValue())
                            .sum())
                    .isGreaterThanOrEqualTo(left.get("grams").doubleValue());
        });
        assertThat(run("plan", "parent-holding", "--days", "3", "--cook", "lentil_ragu")
                        .flat())
                .contains("Left as stock, which keeps for the next plan, worth ");
    }
}
