package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** dishes DISH --kcal K ...: every way in which it can end, in text and JSON, and what it says to try. */
class FillCommandTest {
    /** The contract of dishes DISH --kcal --json, field by field. */
    private static final String CONTRACT = """
            {"schema": "=batchwright.dish/1", "status": "=filled",
             "proof": {"proven_cheapest": "yes/no", "cost_minor": "whole", "lower_bound_minor": "whole",
                       "nodes": "whole", "seconds": "number"},
             "currency": "=USD", "cost_minor": "whole", "budget_minor": "whole",
             "dish": "text", "name": "text", "containers": "whole",
             "asked": {"energy_kcal": {"min": "number", "aim": "number", "max": "number"},
                       "protein_g": {"min": "number"}, "fat_g": {"max": "number"},
                       "with": [], "without": [], "pantry": "yes/no"},
             "batch": {"dish": "text", "containers": "whole", "ingredients": [{"food": "text", "grams": "number"}],
               "fills": [{"containers": "whole",
                 "parts": [{"part": "text", "raw_g": "whole", "cooked_g": "whole", "pieces": "whole?"}],
                 "per_container": {"energy_kcal": "number", "protein_g": "number", "fat_g": "number", "carb_g": "number",
                                   "fibre_g": "number", "fruit_veg_g": "number", "sodium_mg": "number"}}]},
             "shopping": [{"food": "text", "pack_g": "number", "packs": "whole", "price_minor": "whole",
                           "cost_minor": "whole", "from_pantry_g": "number", "used_g": "number", "left_g": "number"}],
             "fridge_days": "whole", "freezes": "yes/no", "reheat": "text",
             "container_reach": {"energy_kcal": {"min": "number", "max": "number"},
                                 "protein_g": {"min": "number", "max": "number"},
                                 "fat_g": {"min": "number", "max": "number"}},
             "hints": [], "audit": {"passed": "yes/no", "checks": [{"rule": "text", "passed": "yes/no"}]},
             "cautions": [{"code": "text", "text": "text", "stops_planning": "yes/no"}]}
            """;

    @TempDir
    Path here;

    @BeforeEach
    void somethingAtHome() throws IOException {
        Folders.stocked(here);
    }

    private Cli.Result run(String line) {
        return Cli.in(here).run(line.split(" ", -1));
    }

    private JsonNode json(String line) {
        return Shape.parse(run(line + " --json").out());
    }

    private static BigDecimal decimal(JsonNode node) {
        return new BigDecimal(node.asText());
    }

    @Test
    void the_first_sentence_answers_and_every_section_is_there() {
        Cli.Result result = run("dishes lentil_ragu --containers 5 --kcal 700 --protein 40 --budget 20");

        assertThat(result.code()).isZero();
        assertThat(result.err()).isEmpty();
        assertThat(result.flat())
                .matches(
                        "5 containers of Lentil and mushroom ragu with whole-wheat pasta and parmesan \\(lentil_ragu\\),"
                                + " each \\d+ kcal, \\d+ g protein: \\d+\\.\\d\\d USD to buy \\(budget 20\\.00\\), proven"
                                + " cheapest\\. .*")
                .contains("679-721", "min 40", "Each of the 5 containers:", "for the whole batch")
                .contains("freeze 1 of the 5 on the cooking day", "Reheat: Microwave", "USD a container.")
                .contains("milk, egg, wheat, gluten. Labels decide", "within 2 hours", "4 C (40 F)", "74 C (165 F)")
                .contains("Thaw frozen containers", "ask a doctor or dietitian", "invented", "12 checks passed");
        assertThat(result.out()).contains("\nFILL\n", "\nCOOK\n", "\nKEEP\n", "\nBUY: ", "\nPROOF\n", "\nCAUTIONS\n");
    }

    @Test
    void json_keeps_its_contract_and_tells_the_same_as_the_text() {
        String ask = "dishes lentil_ragu --containers 5 --kcal 700 --protein 40 --fat 20 --budget 20";
        JsonNode dish = json(ask);

        Shape.check(dish, CONTRACT);
        assertThat(dish.at("/batch/fills/0/eater").isNull()).isTrue();
        assertThat(dish.at("/audit/passed").booleanValue()).isTrue();
        assertThat(dish.at("/proof/proven_cheapest").booleanValue()).isTrue();
        assertThat(decimal(dish.at("/asked/energy_kcal/min"))).isEqualByComparingTo("679");
        BigDecimal cost = BigDecimal.valueOf(dish.get("cost_minor").longValue(), 2);
        assertThat(run(ask).flat()).contains(": " + cost + " USD to buy");
        long sum = 0;
        for (JsonNode line : dish.get("shopping")) {
            sum += line.get("packs").longValue() * line.get("price_minor").longValue();
        }
        assertThat(dish.get("cost_minor").longValue()).isEqualTo(sum);
        assertThat(run(ask + " --json").out().replaceAll("\"seconds\" : [0-9.]+", ""))
                .isEqualTo(run(ask + " --json").out().replaceAll("\"seconds\" : [0-9.]+", ""));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--kcal 600",
                "--kcal 550-650",
                "--protein 25",
                "--kcal 600 --band 1",
                "--kcal 600 --band 0.5 --no-pantry"
            })
    void each_kind_of_wish_is_kept_by_every_dish_that_can(String wish) {
        int filled = 0;
        for (JsonNode one : json("dishes").get("dishes")) {
            String ask = "dishes " + one.get("dish").textValue() + " " + wish;
            JsonNode dish = json(ask);
            Cli.Result text = run(ask);
            assertThat(text.out().lines()).allMatch(line -> line.length() <= 80);
            assertThat(text.code()).isEqualTo(dish.get("status").textValue().equals("filled") ? 0 : 3);
            if (text.code() == 0) {
                filled++;
                JsonNode holds = dish.at("/batch/fills/0/per_container");
                BigDecimal hair = new BigDecimal("0.05"); // JSON shows tenths
                JsonNode energy = dish.at("/asked/energy_kcal");
                if (!energy.get("min").isNull()) {
                    assertThat(decimal(holds.get("energy_kcal")))
                            .isBetween(
                                    decimal(energy.get("min")).subtract(hair),
                                    decimal(energy.get("max")).add(hair));
                } else {
                    assertThat(decimal(holds.get("protein_g"))).isGreaterThanOrEqualTo(new BigDecimal("24.95"));
                }
            }
        }
        assertThat(filled).isGreaterThanOrEqualTo(3);
    }

    @Test
    void five_containers_unless_said_otherwise() {
        assertThat(run("dishes lentil_ragu --kcal 700").out()).startsWith("5 containers of ");
        assertThat(run("dishes lentil_ragu --kcal 700 --containers 1").flat())
                .startsWith("1 container of ")
                .contains("The container: ");
    }

    @Test
    void parts_are_forced_in_and_out() {
        JsonNode without = json("dishes egg_muffins --kcal 550 --without sweet_potato_hash --with Whole-wheat_pita");

        assertThat(without.at("/batch/fills/0/parts/1/raw_g").intValue()).isZero();
        assertThat(without.at("/batch/fills/0/parts/3/pieces").intValue()).isPositive();
        assertThat(without.at("/asked/without/0").textValue()).isEqualTo("sweet potato hash");
    }

    @Test
    void the_pantry_is_left_alone_when_told_so() {
        JsonNode alone = json("dishes lentil_ragu --kcal 700 --no-pantry");

        alone.get("shopping")
                .forEach(line -> assertThat(decimal(line.get("from_pantry_g"))).isZero());
        assertThat(alone.get("cost_minor").longValue())
                .isGreaterThan(
                        json("dishes lentil_ragu --kcal 700").get("cost_minor").longValue());
    }

    @Test
    void a_pantry_that_has_it_all_leaves_nothing_to_buy() throws IOException {
        List<String> lines = new ArrayList<>(List.of("food,grams,note"));
        for (JsonNode line :
                json("dishes lentil_ragu --kcal 700 --with parmesan").get("shopping")) {
            lines.add(line.get("food").textValue() + ",9000,");
        }
        Files.write(here.resolve("profiles/pantry.csv"), lines);

        assertThat(run("dishes lentil_ragu --kcal 700 --with parmesan --budget 0")
                        .flat())
                .contains("g protein: nothing to buy (budget 0.00), proven cheapest.");
    }

    @Test
    void too_much_protein_says_how_much_there_can_be() {
        Cli.Result result = run("dishes lentil_ragu --kcal 700 --protein 50");

        assertThat(result.code()).isEqualTo(3);
        assertThat(result.err()).isEmpty();
        assertThat(result.flat())
                .startsWith(
                        "No container of Lentil and mushroom ragu with whole-wheat pasta and parmesan (lentil_ragu) has"
                                + " 679-721 kcal and at least 50 g protein.")
                .contains("With 679-721 kcal the most protein is ")
                .contains("The nearest above 721 kcal is ")
                .containsPattern(
                        "A container of it holds \\d+ to \\d+ kcal, \\d+ to \\d+ g protein and \\d+ to \\d+ g fat");
        tryAll("dishes lentil_ragu --kcal 700 --protein 50", 2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "lentil_ragu --kcal 1500",
                "lentil_ragu --kcal 100-200",
                "lentil_ragu --protein 90",
                "egg_muffins --kcal 650 --protein 40 --fat 15",
                "egg_muffins --kcal 2000 --protein 200 --fat 3",
                "egg_muffins --kcal 1000 --without whole-wheat_pita",
                "lentil_ragu --kcal 700 --protein 40 --budget 15 --band 1.5",
                "greek_chicken_bowl --containers 12 --kcal 600 --protein 40 --budget 20 --no-pantry",
                "lentil_ragu --protein 90 --budget 1 --no-pantry"
            })
    void whatever_is_said_to_be_tried_works(String ask) {
        tryAll("dishes " + ask, 1);
    }

    private void tryAll(String ask, int atLeast) {
        JsonNode none = json(ask);
        assertThat(none.get("status").textValue()).isEqualTo("not_possible");
        assertThat(none.get("batch").isNull()).isTrue();
        assertThat(none.get("shopping")).isEmpty();
        assertThat(none.get("hints")).hasSizeGreaterThanOrEqualTo(atLeast);
        String text = run(ask).flat();
        for (JsonNode hint : none.get("hints")) {
            String command = hint.get("try").textValue();
            assertThat(text).contains("Try: " + command);
            assertThat(run(command).code()).as(command).isZero();
        }
        assertThat(run(ask).out().lines()).allMatch(line -> line.length() <= 80);
    }

    /** Within 20.00 there is less protein than without a budget; both are said, and work. */
    @Test
    void what_more_money_alone_would_give_is_said() {
        String ask = "dishes lentil_ragu --kcal 700 --protein 45 --budget 20";

        assertThat(run(ask).flat())
                .containsPattern(
                        "the most protein is [0-9.]+ g\\. .* the most protein is [0-9.]+ g, whatever it costs\\.");
        tryAll(ask, 3);
        assertThat(run("dishes lentil_ragu --kcal 700 --protein 45 --budget 200")
                        .flat())
                .doesNotContain("whatever it costs");
    }

    @Test
    void a_figure_beside_the_end_of_the_band_is_another_figure() {
        assertThat(run("dishes lentil_ragu --kcal 700 --protein 30 --band 0").flat())
                .containsPattern("nearest above 700 kcal is 70[0-9.]*[1-9] kcal")
                .containsPattern("nearest below 700 kcal is 699[0-9.]* kcal");
    }

    @Test
    void a_budget_that_is_too_small_says_what_would_do() {
        String ask = "dishes egg_muffins --containers 4 --kcal 500 --budget 14";
        long cost = json("dishes egg_muffins --containers 4 --kcal 500")
                .get("cost_minor")
                .longValue();

        Cli.Result result = run(ask);

        assertThat(cost).isGreaterThan(1400);
        assertThat(result.code()).isEqualTo(3);
        assertThat(result.flat())
                .contains("cost at least " + BigDecimal.valueOf(cost, 2) + " USD, more than the budget of 14.00.");
        assertThat(json(ask).at("/hints/0/kind").textValue()).isEqualTo("budget");
        tryAll(ask, 1);
    }

    @Test
    void what_is_not_sold_is_named() throws IOException {
        Path shop = here.resolve("foods/shop.csv");
        Files.write(
                shop,
                Files.readAllLines(shop).stream()
                        .filter(line -> !line.startsWith("mushroom,") && !line.startsWith("lentils,"))
                        .toList());

        assertThat(run("dishes lentil_ragu --kcal 700 --protein 35").flat())
                .startsWith("Shops and pantry do not have enough for 5 containers of ")
                .contains("No shop in foods/shop.csv sells mushroom, and there is too little at home.")
                .doesNotContain("sells lentils");
        assertThat(run("dishes lentil_ragu --kcal 700 --containers 9").flat()).contains("sells lentils, dry");
    }

    @Test
    void a_dish_that_does_not_freeze_says_by_when_to_eat_it() {
        for (JsonNode one : json("dishes").get("dishes")) {
            if (!one.get("freezes").booleanValue()) {
                String text = run("dishes " + one.get("dish").textValue() + " --kcal 500")
                        .flat();
                assertThat(text).contains("does not freeze: eat all 5 by then").doesNotContain("Thaw");
                return;
            }
        }
        throw new AssertionError("no dish of the starter files does not freeze");
    }
}
