package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fat poured off is named where the dish is cooked, and missing where it is eaten. */
class FatPouredOffShownTest {
    private static final String[] PLAN = {"plan", "parent-holding", "--days", "2", "--dishes", "1", "--json"};

    @TempDir
    Path here;

    private Path dish;

    @BeforeEach
    void starter() throws IOException {
        dish = Folders.starter(here).resolve("foods/dishes/turkey_chili.yaml");
        Folders.keepDishes(here, "turkey_chili");
    }

    private void pourOff(String grams) throws IOException {
        Folders.replace(
                dish, "      tomato_paste: 10 g\n", "      tomato_paste: 10 g\n    fat_poured_off: " + grams + " g\n");
    }

    private JsonNode most(String field) {
        JsonNode dishes =
                Shape.parse(Cli.in(here).run("dishes", "turkey_chili", "--json").out());
        return dishes.at("/dishes/0/containers/4/totals/" + field);
    }

    /** Of 500 g chili 380 g are written: 4 g poured off are 4 x 500 / 380 = 5.263 g of fat and 47.37 kcal. */
    @Test
    void a_container_of_a_dish_holds_less() throws IOException {
        BigDecimal kcal = most("energy_kcal").decimalValue();
        BigDecimal fat = most("fat_g").decimalValue();
        BigDecimal protein = most("protein_g").decimalValue();
        pourOff("4");

        assertThat(kcal.subtract(most("energy_kcal").decimalValue()).doubleValue())
                .isBetween(47.26, 47.48);
        assertThat(fat.subtract(most("fat_g").decimalValue()).doubleValue()).isBetween(5.16, 5.37);
        assertThat(most("protein_g").decimalValue()).isEqualByComparingTo(protein);
        assertThat(Cli.in(here).run("dishes", "turkey_chili").flat()).contains("of its fat 4 g is poured off");
    }

    @Test
    void a_plan_says_how_much_to_pour_off_and_passes_its_audit() throws IOException {
        pourOff("4");

        Cli.Result json = Cli.in(here).run(PLAN);

        assertThat(json.code()).as(json.err()).isZero();
        JsonNode plan = Shape.parse(json.out());
        assertThat(plan.at("/audit/passed").booleanValue()).isTrue();
        JsonNode batch = plan.at("/batches/0");
        int containers = batch.get("containers").intValue();
        int chili = batch.at("/fills/0/parts/0/raw_g").intValue();
        double grams = batch.at("/fat_poured_off/0/grams").doubleValue();
        assertThat(batch.at("/fat_poured_off/0/part").textValue()).isEqualTo("chili");
        assertThat(grams).isBetween(containers * chili * 4 / 380.0 - 0.06, containers * chili * 4 / 380.0 + 0.06);
        assertThat(Cli.in(here)
                        .run("plan", "parent-holding", "--days", "2", "--dishes", "1")
                        .flat())
                .contains("Pour off about " + Math.round(grams) + " g of fat (chili)");
    }
}
