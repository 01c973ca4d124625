package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.app.WriteStarterFiles;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every command but plan, on the files that travel with the program, in a folder without any. */
class StarterFilesTest {
    @TempDir
    Path here;

    private Cli.Result run(String... args) {
        return Cli.in(here).run(args);
    }

    private JsonNode json(String... args) {
        Cli.Result result = run(args);
        assertThat(result.code()).as(result.err()).isZero();
        return Shape.parse(result.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"lifter-gaining", "desk-cutting", "parent-holding"})
    void needs_answers_in_its_first_line(String eater) {
        Cli.Result result = run("needs", eater);

        assertThat(result.code()).isZero();
        assertThat(result.err()).isEmpty();
        assertThat(result.out().lines().findFirst().orElseThrow())
                .matches(".+: \\d{4} kcal a day \\(\\d{4} to \\d{4}\\), at least \\d+ g of protein\\.");
        assertThat(result.out()).contains("Mifflin-St Jeor 1990", "used", "Second opinion", "Cautions");
    }

    @ParameterizedTest
    @ValueSource(strings = {"lifter-gaining", "profiles/desk-cutting.yaml", "parent-holding"})
    void needs_json_keeps_its_contract(String eater) {
        Shape.check(json("needs", eater, "--json"), """
                {"schema": "=batchwright.needs/1",
                 "resting": [{"equation": "text", "kcal_per_day": "number", "error_kcal": "number", "used": "yes/no",
                              "source": "text"}],
                 "pal": "number", "total_kcal": "number", "total_range_kcal": {"least": "number", "most": "number"},
                 "activity": {"says": "text", "pal": "decimal", "pal_least": "number", "pal_most": "number", "source": "text"},
                 "second_opinion": {"equation": "text", "kcal_per_day": "number", "source": "text"},
                 "second_opinions": [{"equation": "text", "kcal_per_day": "number", "error_kcal": "number", "source": "text"}],
                 "goal": {"kcal_per_day": "number"},
                 "targets": {"energy_kcal": {"min": "whole", "aim": "whole", "max": "whole"}, "protein_g": {"min": "whole"},
                             "fat_g": {"min": "whole", "max": "whole"}, "fibre_g": {"min": "whole"},
                             "fruit_veg_g": {"min": "whole"}},
                 "guides": {"carbohydrate_g": {"min": "whole", "max": "whole"}, "saturated_fat_g": {"max": "whole"},
                            "sodium_mg": {"max": "=2300"}, "free_sugar_g": {"max": "whole"}},
                 "guide_lines": [{"name": "text", "says": "text", "source": "text"}],
                 "reference_intakes": [{"nutrient": "text", "name": "text", "unit": "text",
                   "recommended": "number", "recommended_kind": "text", "recommended_source": "text",
                   "limit": "number?", "limit_kind": "text?", "limit_counts": "text?", "limit_source": "text?"}],
                 "cautions": [{"code": "text", "text": "text", "stops_planning": "yes/no"}]}
                """);
    }

    @ParameterizedTest
    @ValueSource(strings = {"energy", "pieces", "cost", "grams"})
    void snack_names_the_reading_of_smallest(String by) {
        Cli.Result result = run("snack", "430", "--protein", "15", "--by", by);

        assertThat(result.code()).isZero();
        assertThat(result.out())
                .containsPattern("\\d+\\s+kcal,\\s+\\d+\\s+over,")
                .contains("Smallest means ");
    }

    @Test
    void snack_json_keeps_its_contract_and_adds_up() {
        JsonNode snack = json("snack", "430", "--protein", "15", "--json");

        Shape.check(snack, """
                {"schema": "=batchwright.snack/1", "status": "=found", "ask": {"energy_kcal": "number", "protein_g": "number"},
                 "answers": [{"items": [{"food": "text", "measure": "text", "count": "whole", "grams": "number"}],
                              "energy_kcal": "number", "protein_g": "number", "over_kcal": "number", "cost_minor": "whole"}]}
                """);
        assertThat(snack.get("answers")).hasSizeBetween(1, 5);
        BigDecimal last = BigDecimal.ZERO;
        for (JsonNode answer : snack.get("answers")) {
            var energy = new BigDecimal(answer.get("energy_kcal").asText());
            assertThat(new BigDecimal(answer.get("over_kcal").asText()))
                    .isEqualByComparingTo(energy.subtract(BigDecimal.valueOf(430)));
            assertThat(energy).isGreaterThanOrEqualTo(last);
            assertThat(answer.get("protein_g").doubleValue()).isGreaterThanOrEqualTo(15);
            last = energy;
        }
    }

    /** USDA SR28: banana 09040 has 89 kcal and 1.09 g protein in 100 g; 1 medium (seq 5) is 118 g. 118 x 0.89 = 105.02. */
    @Test
    void a_snack_of_one_banana_holds_what_the_food_table_says() throws IOException {
        Folders.starter(here);
        Path measures = here.resolve("foods/measures.csv");
        List<String> lines = new ArrayList<>();
        for (String line : Files.readAllLines(measures)) {
            boolean other = !line.startsWith("#") && !line.startsWith("food,") && !line.startsWith("banana,medium");
            lines.add(other ? line.replaceFirst("^([^,]*,[^,]*,[^,]*),[^,]*,", "$1,,") : line);
        }
        Files.write(measures, lines);

        JsonNode answer = json("snack", "100", "--json").at("/answers/0");

        assertThat(answer.at("/items/0/food").textValue()).isEqualTo("banana");
        assertThat(answer.at("/energy_kcal").asText()).isEqualTo("105");
        assertThat(answer.at("/protein_g").asText()).isEqualTo("1.3");
        assertThat(answer.at("/over_kcal").asText()).isEqualTo("5");
    }

    @Test
    void a_snack_out_of_reach_says_how_short_the_nearest_is() {
        Cli.Result text = run("snack", "4000");
        JsonNode snack = json("snack", "4000", "--json");

        assertThat(text.code()).isZero();
        assertThat(text.out())
                .containsPattern("^No snack does this: \\d+ kcal short\\.\n")
                .contains("Nearest: ");
        assertThat(snack.get("status").textValue()).isEqualTo("not_reachable");
        assertThat(snack.get("answers")).isEmpty();
        BigDecimal sum = new BigDecimal(snack.at("/shortfall/kcal_short").asText())
                .add(new BigDecimal(snack.at("/shortfall/closest/energy_kcal").asText()));
        assertThat(sum).isEqualByComparingTo("4000");
    }

    @Test
    void a_snack_for_an_eater_leaves_out_what_the_eater_avoids() throws IOException {
        Folders.starter(here);
        Path profile = here.resolve("profiles/lifter-gaining.yaml");
        Folders.replace(profile, "avoid: []", "avoid: [peanut]");
        Folders.replace(profile, "peanut_butter, peanuts, ", "");

        JsonNode forAnybody = json("snack", "430", "--json");
        JsonNode forThisOne = json("snack", "430", "--kinds", "3", "--for", "lifter-gaining", "--json");

        assertThat(forAnybody.get("answers").toString()).contains("peanut");
        assertThat(forThisOne.get("answers")).isNotEmpty();
        assertThat(forThisOne.get("answers").toString()).doesNotContain("peanut");
    }

    @Test
    void a_snack_names_its_allergens() {
        assertThat(run("snack", "430", "--protein", "15").flat()).contains("Allergens in the snacks above:", "peanut");
        assertThat(run("snack", "430", "--for", "nobody").code()).isEqualTo(2);
    }

    @Test
    void no_gap_needs_no_snack() {
        assertThat(run("snack", "0").out()).startsWith("Nothing to add");
    }

    @Test
    void dishes_lists_all_and_shows_each_in_full() {
        JsonNode dishes = json("dishes", "--json").get("dishes");
        String table = run("dishes").out();

        assertThat(dishes).hasSize(33);
        for (JsonNode dish : dishes) {
            String id = dish.get("dish").textValue();
            assertThat(table).contains("\n" + id + " ");
            Cli.Result full = run("dishes", id);
            assertThat(full.code()).isZero();
            assertThat(full.flat()).contains(id, "Parts", "One container", "Allergens", "Steps", "Reheat");
            assertThat(full.flat()).containsAnyOf("74 C", "Eat cold, straight from the fridge");
            assertThat(json("dishes", id, "--json").get("dishes")).hasSize(1);
        }
    }

    /** The label of this invented food states no fibre. */
    @Test
    void a_food_from_a_label_says_so_and_what_may_be_more() {
        String skyr = run("foods", "example_skyr").out();
        JsonNode food = json("foods", "example_skyr", "--json").at("/foods/0");

        assertThat(skyr)
                .contains("Source: label, EU, per 100 g; invented")
                .containsPattern("carbohydrate +at least 4 +g");
        assertThat(skyr).containsPattern("fibre +not known");
        assertThat(food.at("/per_100_g/carbohydrate_g").decimalValue()).isEqualByComparingTo("4");
        assertThat(food.at("/per_100_g/fibre_g").isNull()).isTrue();
        assertThat(food.get("incomplete").toString())
                .contains("carbohydrate_g", "fibre_g")
                .doesNotContain("protein_g");
        assertThat(run("foods", "example_protein_bar").out()).containsPattern("bar +45 +label");
    }

    /** Words in any order, in any letter case, by their beginnings, with one slip in a long word. */
    @Test
    void foods_finds_by_words() {
        assertThat(found("yogurt", "GREEK")).contains("greek_yogurt");
        assertThat(found("greek yog")).contains("greek_yogurt");
        assertThat(found("almnods")).contains("almonds");
        assertThat(found("brocoli")).contains("broccoli");
        assertThat(found("oats")).containsExactly("rolled_oats", "example_oat_drink");
        assertThat(found("egz")).isEmpty();
        assertThat(found("zzzzzz")).isEmpty();
        assertThat(found("almonds", "zzzzzz")).contains("almonds");
        assertThat(found().stream().filter(id -> !id.startsWith("example_"))).hasSize(402);
        assertThat(run("foods", "zzzzzz").code()).isZero();
    }

    private List<String> found(String... words) {
        List<String> args = new ArrayList<>(List.of("foods", "--json"));
        args.addAll(List.of(words));
        List<String> ids = new ArrayList<>();
        json(args.toArray(new String[0]))
                .get("foods")
                .forEach(f -> ids.add(f.get("food").textValue()));
        return ids;
    }

    /** Worked out again from the table's own cells: price of the cheapest pack per edible gram. */
    @Test
    void foods_compares_prices() {
        for (JsonNode food : json("foods", "--json").get("foods")) {
            BigDecimal share =
                    BigDecimal.ONE.subtract(decimal(food, "refuse_percent").movePointLeft(2));
            BigDecimal kcal = decimal(food.get("per_100_g"), "energy_kcal");
            BigDecimal least = null;
            for (JsonNode pack : food.get("packs")) {
                BigDecimal per1000 = decimal(pack, "price_minor")
                        .multiply(BigDecimal.valueOf(100_000))
                        .divide(decimal(pack, "grams").multiply(share).multiply(kcal), 6, RoundingMode.HALF_UP);
                least = least == null ? per1000 : least.min(per1000);
            }
            if (least != null) {
                assertThat(decimal(food, "per_1000_kcal_minor"))
                        .as(food.get("food").textValue())
                        .isCloseTo(least, org.assertj.core.api.Assertions.within(new BigDecimal("0.6")));
            }
        }
    }

    @Test
    void one_food_by_its_short_name_is_shown_in_full() {
        assertThat(run("foods", "rolled_oats").out())
                .startsWith("Rolled oats (rolled_oats): 379 kcal and 13.2 g protein in 100 g.")
                .contains("USDA SR28 no. 08120", "Packs", "invented", "Measures", "gluten", "canister");
    }

    @Test
    void check_is_silent_when_all_is_right() {
        Cli.Result result = run("check");

        assertThat(result.code()).isZero();
        assertThat(result.both()).isEmpty();
        Shape.check(
                json("check", "--json"),
                "{\"schema\": \"=batchwright.check/1\", \"status\": \"=right\", \"problems\": []}");
    }

    @Test
    void init_writes_files_that_are_right_and_plan_the_same() {
        Cli.Result init = run("init", "mine");

        assertThat(init.code()).isZero();
        assertThat(init.out()).contains("foods/catalogue.csv", "profiles/lifter-gaining.yaml", "mine");
        assertThat(run("check", "--data", "mine").both()).isEmpty();
        assertThat(run("needs", "lifter-gaining", "--data", "mine").out())
                .isEqualTo(run("needs", "lifter-gaining").out());
        assertThat(run("foods", "--json", "--data", "mine").out())
                .isEqualTo(run("foods", "--json").out());
    }

    @Test
    void init_never_overwrites() throws IOException {
        Files.createDirectories(here.resolve("mine/profiles"));
        Files.writeString(here.resolve("mine/profiles/pantry.csv"), "mine\n");
        Map<String, String> before = Folders.content(here);

        Cli.Result result = run("init", "mine");

        assertThat(result.code()).isEqualTo(2);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).contains("profiles/pantry.csv", "Nothing was written");
        assertThat(Folders.content(here)).isEqualTo(before);
    }

    @Test
    void the_current_folder_is_used_when_it_has_foods() throws IOException {
        Folders.starter(here);
        Folders.replace(here.resolve("profiles/lifter-gaining.yaml"), "name: Lifter, gaining", "name: Somebody else");

        assertThat(run("needs", "lifter-gaining").out()).startsWith("Somebody else: ");
    }

    @Test
    void profiles_without_foods_are_no_workspace_and_that_is_said() throws IOException {
        Files.createDirectories(here.resolve("profiles"));
        new WriteStarterFiles().into(here.resolve("elsewhere"));
        Files.copy(
                here.resolve("elsewhere/profiles/lifter-gaining.yaml"), here.resolve("profiles/lifter-gaining.yaml"));

        Cli.Result result = run("needs", "profiles/lifter-gaining.yaml");

        assertThat(result.code()).isZero();
        assertThat(result.err()).startsWith("note: ").hasLineCount(1);
    }

    @Test
    void no_text_is_wider_than_80_columns() {
        List<String> pages = new ArrayList<>(List.of(
                run().out(),
                run("--help").out(),
                run("needs", "--activities").out(),
                run("dishes").out(),
                run("foods").out(),
                run("foods", "zzz").out(),
                run("foods", "chicken", "--all").out(),
                run("foods", "--compare").out(),
                run("snack", "430").out(),
                run("snack", "430", "--protein", "15", "--by", "cost", "--kinds", "3")
                        .out(),
                run("snack", "4000").out(),
                run("init", "mine").out()));
        for (String eater : List.of("lifter-gaining", "desk-cutting", "parent-holding")) {
            pages.add(run("needs", eater).out());
        }
        json("dishes", "--json")
                .get("dishes")
                .forEach(d -> pages.add(run("dishes", d.get("dish").textValue()).out()));
        json("foods", "--json")
                .get("foods")
                .forEach(f -> pages.add(run("foods", f.get("food").textValue()).out()));

        for (String page : pages) {
            assertThat(page).isNotEmpty();
            assertThat(page.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        }
    }

    private static BigDecimal decimal(JsonNode node, String field) {
        return new BigDecimal(node.get(field).asText());
    }
}
