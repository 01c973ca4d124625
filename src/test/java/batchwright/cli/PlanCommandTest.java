package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** plan on the starter files: two days for one eater, which is quickly proven. */
class PlanCommandTest {
    /** The contract of plan --json, field by field. */
    private static final String CONTRACT = """
            {"schema": "=batchwright.plan/1", "status": "=planned",
             "proof": {"proven_cheapest": "yes/no", "cost_minor": "whole", "lower_bound_minor": "whole",
                       "nodes": "whole", "seconds": "number"},
             "currency": "=USD", "cost_minor": "whole", "budget_minor": "whole", "days": "whole",
             "cooking_day": "=2026-11-25",
             "eaters": [{"eater": "text",
               "targets": {"energy_kcal": {"min": "whole", "aim": "whole", "max": "whole"}, "protein_g": {"min": "whole"},
                           "fat_g": {"min": "whole", "max": "whole"}, "fibre_g": {"min": "whole"},
                           "fruit_veg_g": {"min": "whole"}},
               "days": [{"day": "whole",
                 "containers": [{"dish": "text", "count": "whole", "from": "text"}],
                 "snacks": [{"food": "text", "measure": "text", "count": "whole", "grams": "number"}],
                 "always": [{"food": "text", "measure": "text", "count": "whole", "grams": "number"}],
                 "totals": {"energy_kcal": "number", "protein_g": "number", "fat_g": "number", "carb_g": "number",
                            "fibre_g": "number", "fruit_veg_g": "number", "sodium_mg": "number"}}],
               "nutrients": [{"nutrient": "text", "name": "text", "unit": "text", "per_day": "number", "complete": "yes/no",
                 "standing": "text", "percent": "whole?", "counted_by_limit": "number?",
                 "recommended": "number?", "recommended_kind": "text?", "recommended_source": "text?",
                 "limit": "number?", "limit_kind": "text?", "limit_counts": "text?", "limit_source": "text?"}]}],
             "batches": [{"dish": "text", "containers": "whole",
               "ingredients": [{"food": "text", "grams": "number"}],
               "fills": [{"eater": "text", "containers": "whole",
                 "parts": [{"part": "text", "raw_g": "whole", "cooked_g": "whole", "pieces": "whole?"}],
                 "per_container": {"energy_kcal": "number", "protein_g": "number", "fat_g": "number", "carb_g": "number",
                                   "fibre_g": "number", "fruit_veg_g": "number", "sodium_mg": "number"},
                 "cooked_g": "number", "volume_ml": "number"}]}],
             "shopping": [{"food": "text", "pack_g": "number", "packs": "whole", "price_minor": "whole",
                           "cost_minor": "whole", "from_pantry_g": "number", "used_g": "number", "left_g": "number",
                           "loose": "yes/no", "units": "whole?", "unit_g": "number?", "unit_drained_g": "number?",
                           "seen": "text?", "stale": "yes/no"}],
             "use_up": [{"food": "text", "grams": "number", "use_by": "text"}],
             "past_use_by": [{"food": "text", "grams": "number", "use_by": "text"}],
             "audit": {"passed": "yes/no", "checks": [{"rule": "text", "passed": "yes/no"}]},
             "clashes": [], "cautions": [{"code": "text", "text": "text", "stops_planning": "yes/no"}]}
            """;

    @TempDir
    Path here;

    private Cli.Result plan(String... more) {
        String[] args = new String[4 + more.length];
        System.arraycopy(new String[] {"plan", "parent-holding", "--days", "2"}, 0, args, 0, 4);
        System.arraycopy(more, 0, args, 4, more.length);
        return Cli.in(here).run(args);
    }

    @Test
    void the_first_sentence_answers_and_every_section_is_there() {
        Cli.Result result = plan("--budget", "75.50", "--cook", "lentil_ragu");

        assertThat(result.code()).isZero();
        assertThat(result.err()).isEmpty();
        assertThat(result.out())
                .startsWith("2 days for Parent, holding: ")
                .containsPattern("^.* USD \\(budget 75\\.50\\), proven cheapest\\.\n")
                .contains("\nCOOK: ", "\nDAYS: ", "\nNUTRIENTS: ", "\nBUY: ", "\nPROOF\n", "\nCAUTIONS\n");
        assertThat(result.flat())
                .contains("Labels decide", "within 2 hours", "4 C (40 F)", "74 C (165 F)", "invented")
                .contains("no medical advice", "milk (parmesan, left out of every container), egg (parmesan, ");
        assertThat(result.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void json_keeps_its_contract() {
        JsonNode plan = Shape.parse(plan("--budget", "75.50", "--json").out());

        Shape.check(plan, CONTRACT);
        assertThat(plan.get("budget_minor").intValue()).isEqualTo(7550);
        assertThat(plan.at("/proof/proven_cheapest").booleanValue()).isTrue();
        assertThat(plan.at("/audit/passed").booleanValue()).isTrue();
        assertThat(plan.get("eaters")).hasSize(1);
        assertThat(plan.at("/eaters/0/days")).hasSize(2);
    }

    /** The average of the JSON's own days; each of them is rounded to 0.1, and the average to 0.01. */
    @Test
    void nutrients_are_the_average_of_the_days() {
        JsonNode eater = Shape.parse(plan("--json").out()).at("/eaters/0");

        assertThat(eater.get("nutrients")).hasSize(18);
        for (String[] pair : new String[][] {
            {"ENERC_KCAL", "energy_kcal"}, {"PROCNT", "protein_g"}, {"CHOCDF", "carb_g"}, {"NA", "sodium_mg"}
        }) {
            double sum = 0;
            for (JsonNode day : eater.get("days")) {
                sum += day.at("/totals/" + pair[1]).doubleValue();
            }
            assertThat(nutrient(eater, pair[0]).get("per_day").doubleValue())
                    .as(pair[0])
                    .isCloseTo(sum / eater.get("days").size(), within(0.06));
        }
        assertThat(nutrient(eater, "SUGAR").get("standing").textValue()).isEqualTo("not_compared");
        assertThat(nutrient(eater, "MG").get("limit_counts").textValue()).isEqualTo("supplements");
    }

    private static JsonNode nutrient(JsonNode eater, String tagname) {
        for (JsonNode nutrient : eater.get("nutrients")) {
            if (nutrient.get("nutrient").textValue().equals(tagname)) {
                return nutrient;
            }
        }
        throw new AssertionError(tagname + " is not there");
    }

    @Test
    void nutrients_that_are_below_are_named_and_do_not_alarm() {
        Cli.Result result = plan();

        JsonNode eater = Shape.parse(plan("--json").out()).at("/eaters/0");
        String section = section(result);
        for (JsonNode nutrient : eater.get("nutrients")) {
            boolean below = nutrient.get("standing").textValue().endsWith("short");
            assertThat(section.contains(nutrient.get("name").textValue() + " ")
                            && section.contains(nutrient.get("percent") + " %)"))
                    .as(nutrient.toString())
                    .isEqualTo(below);
        }
        assertThat(section).contains("no deficiency", "a clinician", "--nutrients shows all", "salt that you add");
    }

    private static String section(Cli.Result result) {
        return result.flat().replaceAll(".* NUTRIENTS: ", "").replaceAll(" BUY: .*", "");
    }

    @Test
    void under_19_years_nothing_is_compared_by_age() throws IOException {
        Path profile = Folders.starter(here).resolve("profiles/parent-holding.yaml");
        Files.writeString(profile, Files.readString(profile).replaceFirst("age: [0-9]+", "age: 18"));

        assertThat(section(plan())).contains("the published table begins at 19 years");
        assertThat(Cli.in(here).run("needs", "parent-holding").flat())
                .contains("the published table begins at 19 years")
                .doesNotContain("by sex and age");
    }

    @Test
    void all_nutrients_on_request() {
        Cli.Result result = plan("--nutrients");

        assertThat(result.code()).isZero();
        assertThat(result.out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(result.out()
                        .lines()
                        .filter(line -> line.matches("  [a-zA-Z0-9 ]+, (kcal|g|mg|ug) +(>=)?[0-9].*"))
                        .toList())
                .hasSize(18);
        assertThat(section(result)).contains("from memory", "no deficiency", "free or added sugar", "enriched");
    }

    @Test
    void the_lines_of_the_shopping_list_add_up() {
        JsonNode plan = Shape.parse(plan("--json").out());

        long cost = 0;
        for (JsonNode line : plan.get("shopping")) {
            long packs = line.get("packs").longValue();
            cost += line.get("cost_minor").longValue();
            assertThat(line.get("cost_minor").longValue())
                    .isEqualTo(packs * line.get("price_minor").longValue());
            BigDecimal bought = decimal(line, "pack_g").multiply(BigDecimal.valueOf(packs));
            assertThat(bought.add(decimal(line, "from_pantry_g")).subtract(decimal(line, "used_g")))
                    .isEqualByComparingTo(decimal(line, "left_g"))
                    .isNotNegative();
        }
        assertThat(plan.get("cost_minor").longValue()).isEqualTo(cost);
        assertThat(plan.at("/proof/cost_minor").longValue()).isEqualTo(cost);
        assertThat(plan.get("budget_minor").isNull()).isTrue();
    }

    @Test
    void containers_eaten_are_the_containers_cooked() {
        JsonNode plan = Shape.parse(plan("--json").out());

        for (JsonNode batch : plan.get("batches")) {
            int eaten = 0;
            for (JsonNode day : plan.at("/eaters/0/days")) {
                for (JsonNode container : day.get("containers")) {
                    eaten += container.get("dish").equals(batch.get("dish"))
                            ? container.get("count").intValue()
                            : 0;
                }
            }
            assertThat(batch.get("containers").intValue()).isEqualTo(eaten);
        }
    }

    @Test
    void text_and_json_tell_the_same_cost() {
        long cost = Shape.parse(plan("--json").out()).get("cost_minor").longValue();

        assertThat(plan().out())
                .contains(": " + BigDecimal.valueOf(cost, 2).toPlainString() + " USD, proven cheapest.");
    }

    @Test
    void two_runs_differ_in_nothing_but_seconds() {
        String seconds = "\"seconds\" : [0-9.]+";

        assertThat(plan("--json").out().replaceAll(seconds, ""))
                .isEqualTo(plan("--json").out().replaceAll(seconds, ""));
        assertThat(plan().out()).isEqualTo(plan().out());
    }

    @Test
    void cooks_only_among_the_dishes_named() {
        JsonNode plan = Shape.parse(plan("--budget", "75.50", "--cook", "lentil_ragu,turkey_chili", "--json")
                .out());

        Shape.check(plan, CONTRACT);
        assertThat(plan.get("batches"))
                .isNotEmpty()
                .allMatch(batch -> List.of("lentil_ragu", "turkey_chili")
                        .contains(batch.get("dish").textValue()));
        assertThat(plan.get("cost_minor").longValue())
                .isGreaterThanOrEqualTo(
                        Shape.parse(plan("--json").out()).get("cost_minor").longValue());
    }

    /** Legumes at every meal: more than 100 g a day where 46 are asked for. The usual plan holds less and says nothing. */
    @Test
    void very_much_fibre_is_pointed_out() {
        String[] legumes = {"plan", "lifter-gaining", "--days", "2", "--cook", "split_pea_dal,lentil_ragu"};

        assertThat(Cli.in(here).run(legumes).flat())
                .containsPattern("An average day holds 1\\d\\d g of fibre; 38 g are asked for");
        assertThat(plan("--cook", "greek_chicken_bowl,walnut_chicken,ginger_pork_rice", "--json")
                        .out())
                .doesNotContain("fibre_high");
    }

    @Test
    void a_dish_that_is_not_there_is_named_with_its_nearest() {
        Cli.Result result = plan("--cook", "lentil_ragu,turky_chili");

        assertThat(result.code()).isEqualTo(2);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).contains("no dish called \"turky_chili\"", "turkey_chili");
    }

    @Test
    void two_eaters_share_a_batch() throws IOException {
        Path profiles = Folders.starter(here).resolve("profiles");
        Files.writeString(
                profiles.resolve("parent-holding.yaml"),
                "\nsnacks:\n  only: [egg, avocado, banana]\n",
                StandardOpenOption.APPEND);
        Files.copy(profiles.resolve("parent-holding.yaml"), profiles.resolve("partner-holding.yaml"));
        Folders.replace(profiles.resolve("partner-holding.yaml"), "eater: parent-holding", "eater: partner-holding");
        Folders.keepDishes(here, "lentil_ragu"); // so that it is quickly proven

        Cli.Result result = Cli.in(here)
                .run(
                        "plan",
                        "partner-holding",
                        "profiles/parent-holding.yaml",
                        "--days",
                        "2",
                        "--dishes",
                        "1",
                        "--json");

        JsonNode plan = Shape.parse(result.out());
        Shape.check(plan, CONTRACT.replace("\"budget_minor\": \"whole\"", "\"budget_minor\": \"whole?\""));
        assertThat(result.code()).isZero();
        assertThat(plan.at("/eaters/0/eater").textValue()).isEqualTo("partner-holding");
        assertThat(plan.at("/eaters/1/eater").textValue()).isEqualTo("parent-holding");
        assertThat(plan.at("/batches/0/fills")).hasSize(2);
    }

    private static BigDecimal decimal(JsonNode node, String field) {
        return new BigDecimal(node.get(field).asText());
    }
}
