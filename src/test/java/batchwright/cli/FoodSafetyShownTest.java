package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Food safety beside a dish and beside its containers. Temperatures: USDA FSIS, 2025; time and fridge: see docs/science.md. */
class FoodSafetyShownTest {
    @TempDir
    Path here;

    @BeforeEach
    void files() {
        Folders.starter(here);
    }

    private Cli.Result run(String... args) {
        return Cli.in(here).run(args);
    }

    private JsonNode json(String... args) {
        return Shape.parse(run(args).out());
    }

    private void fridgeDays(String days) throws IOException {
        Folders.replace(here.resolve("foods/dishes/walnut_chicken.yaml"), "fridge_days: 4", "fridge_days: " + days);
    }

    @Test
    void names_the_temperature_where_it_is_cooked() {
        String says = "Least temperature inside - chicken thigh, without skin and bone: 74 C (165 F).";
        assertThat(run("dishes", "walnut_chicken").flat()).contains(says);
        assertThat(run("dishes", "walnut_chicken", "--kcal", "700").flat()).contains(says);
        assertThat(run("dishes", "mustard_pork_tray").flat()).contains(": 63 C (145 F), then rest 3 minutes.");
        assertThat(run("dishes", "lentil_ragu").flat()).doesNotContain("Least temperature inside");
        for (String at : new String[] {"/dishes/0", "/batch"}) {
            JsonNode answer = at.equals("/batch")
                    ? json("dishes", "walnut_chicken", "--kcal", "700", "--json")
                    : json("dishes", "walnut_chicken", "--json");
            Shape.check(answer.at(at + "/core_temperatures/0"), """
                    {"foods": ["text"], "celsius": "whole", "fahrenheit": "whole", "rest_minutes": "whole",
                     "source": "text"}""");
            assertThat(answer.at(at + "/core_temperatures/0/celsius").intValue())
                    .isEqualTo(74);
        }
    }

    /** The trade's five days are common practice; published home advice is 3-4 (USDA FSIS). */
    @ParameterizedTest
    @CsvSource({"4, false", "5, true"})
    void more_than_four_days_in_the_fridge_is_longer_than_advised(String days, boolean longer) throws IOException {
        fridgeDays(days);
        String code = "fridge_days_long.walnut_chicken";
        String says = "keeps " + days + " days by its file. Five days are a habit of the trade (common practice)";

        assertThat(run("check").both().contains(days + " days in the fridge are longer than published home advice"))
                .isEqualTo(longer);
        assertThat(run("dishes", "walnut_chicken").flat().contains(says)).isEqualTo(longer);
        assertThat(run("dishes", "walnut_chicken", "--kcal", "700").flat().contains(says))
                .isEqualTo(longer);
        assertThat(json("dishes", "walnut_chicken", "--json")
                        .at("/dishes/0/cautions")
                        .findValuesAsText("code"))
                .contains("local_advice")
                .satisfies(codes -> assertThat(codes.contains(code)).isEqualTo(longer));
        assertThat(json("dishes", "walnut_chicken", "--kcal", "700", "--json")
                        .get("cautions")
                        .findValuesAsText("code")
                        .contains(code))
                .isEqualTo(longer);
    }

    /** FDA Food Code 3-501.14 and 3-501.16; USDA: 2 hours, 1 above 32 C; United Kingdom: rice 24 hours. */
    @Test
    void containers_come_with_how_to_cool_keep_and_reheat_them() {
        assertThat(run("dishes", "peanut_stew", "--kcal", "700", "--containers", "6")
                        .flat())
                .contains("Raw poultry, minced meat and fish keep 1-2 days in the fridge")
                .contains("within 2 hours, 1 hour where it is above 32 C (90 F)")
                .contains("from 57 to 21 C within 2 hours and to 5 C within 6 hours in all")
                .contains("hot, at 57 C (135 F) or more, or cold, at 5 C (41 F) or less")
                .contains("Keep the fridge at or below 4 C (40 F) and eat cooked food within 3-4 days")
                .contains("Thaw frozen containers in the fridge", "do not freeze them again")
                .contains("Reheat once, until steaming, 74 C (165 F) inside")
                .contains("chill it within 1 hour. British advice keeps cooked rice 1 day (24 hours) only")
                .contains("the food-safety authority where you live goes first");
        assertThat(run("dishes", "lentil_ragu", "--kcal", "600").flat()).doesNotContain("Raw poultry", "Rice needs");
    }
}
