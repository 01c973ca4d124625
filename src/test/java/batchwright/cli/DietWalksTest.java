package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Walks of new users with a diet, from init to a plan: files in, text out, at most six commands and two edited files each. */
class DietWalksTest {
    private static final Set<String> MEAT_AND_FISH = Set.of("meat", "fish");

    @TempDir
    Path here;

    @BeforeEach
    void init() {
        assertThat(run("init", ".").code()).isZero();
    }

    private Cli.Result run(String... args) {
        return Cli.in(here).run(args);
    }

    private void avoid(String profile, String list) throws IOException {
        Path file = here.resolve("profiles/" + profile + ".yaml");
        String text = Files.readString(file);
        Files.writeString(
                file,
                text.contains("\navoid: ")
                        ? text.replaceFirst("\navoid: .*", "\navoid: " + list)
                        : text.stripTrailing() + "\navoid: " + list + "\n");
    }

    /** Groups and allergens of all that is bought for a plan. */
    private Set<String> bought(JsonNode plan, String what) {
        Set<String> all = new TreeSet<>();
        for (JsonNode line : plan.get("shopping")) {
            JsonNode food = Shape.parse(
                            run("foods", line.get("food").textValue(), "--json").out())
                    .at("/foods/0");
            if (what.equals("group")) {
                all.add(food.get("group").textValue());
            } else {
                food.get(what).forEach(word -> all.add(word.textValue()));
            }
        }
        return all;
    }

    @Test
    void vegetarian_lactose_free_and_cutting() throws IOException {
        avoid("desk-cutting", "[vegetarian, lactose-free]");
        Folders.replace(
                here.resolve("profiles/desk-cutting.yaml"),
                "only: [apple, egg, greek_yogurt, low_fat_cottage_cheese, skim_milk]",
                "only: [apple, banana, almonds, peanuts]");

        Cli.Result check = run("check");
        assertThat(check.code()).isZero();
        assertThat(check.both())
                .contains("animal rennet: parmesan")
                .contains("read the label, and name those that are all right: checked: [parmesan]");

        JsonNode plan =
                Shape.parse(run("plan", "desk-cutting", "--days", "3", "--json").out());
        assertThat(plan.get("status").textValue()).isIn("planned", "not_proven");
        assertThat(plan.at("/audit/passed").booleanValue()).isTrue();
        assertThat(bought(plan, "group")).doesNotContainAnyElementsOf(MEAT_AND_FISH);
        assertThat(bought(plan, "origins")).doesNotContain("lactose", "little_lactose", "by_product");
        assertThat(bought(plan, "origins_in_doubt")).doesNotContain("lactose", "by_product");
    }

    @Test
    void vegan_with_a_budget() throws IOException {
        avoid("lifter-gaining", "[vegan]");

        Cli.Result plan = run("plan", "lifter-gaining", "--days", "2", "--budget", "45", "--json");

        assertThat(plan.code()).isIn(0, 4);
        JsonNode json = Shape.parse(plan.out());
        assertThat(json.get("cost_minor").longValue()).isLessThanOrEqualTo(4500);
        assertThat(bought(json, "origins"))
                .doesNotContain("milk", "egg", "honey", "fish", "beef", "pig", "land_meat", "lactose");
        assertThat(bought(json, "allergens")).doesNotContain("milk", "egg", "fish");
    }

    /** A food of one's own of which nothing is said is asked about, and used once its label was read. */
    @Test
    void a_food_without_origins() throws IOException {
        avoid("lifter-gaining", "[vegan]");
        Path profile = here.resolve("profiles/lifter-gaining.yaml");
        Files.writeString(profile, Files.readString(profile).replaceFirst("only: \\[[^]]*]", "only: [banana, my_bar]"));
        Files.writeString(
                here.resolve("foods/labels.csv"),
                Files.readString(here.resolve("foods/labels.csv")).stripTrailing()
                        + "\nmy_bar,my own bar,sweet,eu,1 bar = 45 g,687 kJ / 164 kcal,5.5,2.2,14,2.0,4.0,15,0.25 g salt,6.0,,,,,3,,,,,mine\n");
        Files.writeString(
                here.resolve("foods/shop.csv"),
                Files.readString(here.resolve("foods/shop.csv")).stripTrailing()
                        + "\nmy_bar,corner market,box,450,1.00,USD,2026-11-21,mine\n");

        assertThat(run("check").both())
                .contains("not used, because nothing is said of what it is made of")
                .contains("my_bar");
        assertThat(run("snack", "160", "--for", "lifter-gaining").out()).doesNotContain("my own bar");

        Files.writeString(profile, Files.readString(profile).stripTrailing() + "\nchecked: [my_bar]\n");

        assertThat(run("check").both()).doesNotContain("my_bar");
        assertThat(run("snack", "160", "--for", "lifter-gaining").out()).contains("my own bar");
    }

    @Test
    void a_pack_with_bones_for_a_dish_without() throws IOException {
        Path shop = here.resolve("foods/shop.csv");
        Files.writeString(
                shop,
                Files.readString(shop).stripTrailing()
                        + "\nchicken_breast,my butcher,\"tray, bone in\",1000,5.49,USD,2026-11-21,mine\n");

        Cli.Result check = run("check");

        assertThat(check.code()).isEqualTo(2);
        assertThat(check.both())
                .contains(
                        "error: the bone is still on this pack, but chicken_breast is counted with nothing thrown away")
                .contains("^^^^")
                .contains("or another food that is");
        Folders.replace(shop, "chicken_breast,my butcher", "chicken_breast_skin,my butcher");
        assertThat(run("check").code()).isZero();
    }

    @Test
    void halal_is_not_claimed() throws IOException {
        avoid("parent-holding", "[halal]");
        assertThat(run("check").both()).contains("cannot be judged from ingredients", "[no_pork, no_alcohol]");

        avoid("parent-holding", "[no_porc]");
        assertThat(run("check").both()).contains("nearest: \"no_pork\"");
    }

    /** Swap one dish, keep another. */
    @Test
    void a_dish_is_swapped_and_another_kept() {
        String cook = "lentil_ragu,chickpea_tagine,tuna_bean_pasta";
        JsonNode plan = Shape.parse(run(
                        "plan",
                        "parent-holding",
                        "--days",
                        "2",
                        "--cook",
                        cook,
                        "--with",
                        "tuna_bean_pasta",
                        "--without",
                        "chickpea_tagine",
                        "--json")
                .out());

        assertThat(plan.get("batches").findValuesAsText("dish"))
                .contains("tuna_bean_pasta")
                .doesNotContain("chickpea_tagine");
        assertThat(run("plan", "parent-holding", "--with", "lentil_ragu", "--without", "lentils")
                        .err())
                .contains("lentil_ragu is asked for, but nobody here may eat it");
        assertThat(run("plan", "parent-holding", "--without", "lentil_rag").err())
                .contains("Nearest: lentil_ragu.");
    }
}
