package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pot of a kept plan, as its weight came out: four containers of 300 g of tagine, raw, two of which have couscous as well. */
class PotCommandTest {
    private static final String FILL = """
            { "eater": "%s", "containers": 2, "parts": [
                { "part": "tagine", "raw_g": 300, "cooked_g": 375 }, { "part": "couscous", "raw_g": %s, "cooked_g": 0 },
                { "part": "almonds", "raw_g": 0, "cooked_g": 0 } ],
              "per_container": { "energy_kcal": 500, "protein_g": 20 }, "volume_ml": 400 }""";
    private static final String DAY = """
            { "day": 1, "containers": [ { "dish": "chickpea_tagine", "count": 2, "from": "fridge" } ],
              "snacks": [], "always": [], "totals": { "energy_kcal": 1000 } }""";

    @TempDir
    Path here;

    @BeforeEach
    void kitchen() throws IOException {
        Folders.starter(here);
    }

    /** @param swaps of the recipe, which names olive oil and lets canola oil or nothing take its place */
    private void keep(String swaps, String foods) throws IOException {
        Files.createDirectories(here.resolve("profiles/plans"));
        Files.writeString(here.resolve("profiles/plans/2026-11-25.json"), """
                { "schema": "batchwright.plan/1", "cooking_day": "2026-11-25", "days": 1,
                  "eaters": [ { "eater": "lifter-gaining", "days": [ %s ] }, { "eater": "desk-cutting", "days": [ %s ] } ],
                  "batches": [ { "dish": "chickpea_tagine", "ingredients": [ %s ], "swaps": [ %s ],
                    "fills": [ %s, %s ] } ],
                  "shopping": [] }
                """.formatted(
                DAY, DAY, foods, swaps, FILL.formatted("lifter-gaining", 100), FILL.formatted("desk-cutting", 0)));
    }

    private static final String CHICKPEAS = "{ \"food\": \"chickpeas\", \"grams\": 300 }";
    private static final String CANOLA = CHICKPEAS + ", { \"food\": \"canola_oil\", \"grams\": 40 }";
    private static final String BY_CANOLA = "{ \"food\": \"olive_oil\", \"by\": \"canola_oil\" }";

    private JsonNode pot(String... more) throws IOException {
        Cli.Result result = Cli.in(here)
                .run(("book filled chickpea_tagine --pot-with-lid 3.4kg --pot 1.9kg --json " + String.join(" ", more))
                        .strip()
                        .split(" +"));
        assertThat(result.code()).as(result.err()).isZero();
        return Shape.parse(result.out());
    }

    /** 1500 g in four containers: 375 g each, and each holds what was planned, as only water is gone. */
    @Test
    void a_pot_with_a_swapped_food_is_shared_out() throws IOException {
        keep(BY_CANOLA, CANOLA);

        JsonNode pot = pot();

        assertThat(pot.get("raw_g").asDouble()).isEqualTo(1200);
        assertThat(pot.get("factor").asDouble()).isEqualTo(1.25);
        pot.get("fills").forEach(fill -> {
            assertThat(fill.get("grams").asInt()).isEqualTo(375);
            assertThat(fill.get("energy_kcal").asDouble())
                    .isEqualTo(fill.get("planned_kcal").asDouble());
        });
    }

    /**
     * Twice the oil that was planned: of 379 g of the recipe 12 g are oil, so 38 g in 1200 g, with 8.84 kcal each (SR28 04582, 884 kcal in
     * 100 g). The marks of the scale may leave a few grams in the pot.
     */
    @Test
    void what_the_book_says_of_the_cooking_counts() throws IOException {
        keep(BY_CANOLA, CANOLA);
        double before = kcal(pot());
        assertThat(Cli.in(here)
                        .run("book cooked chickpea_tagine from 300 g chickpeas, 80 g canola_oil --sure".split(" "))
                        .code())
                .isZero();

        JsonNode after = pot();

        assertThat(kcal(after) - before).isCloseTo(1200 * 12 / 379.0 * 8.84, within(15.0));
        assertThat(after.get("raw_g").asDouble()).isCloseTo(1238, within(0.1));
    }

    private static double kcal(JsonNode pot) {
        double kcal = 0;
        for (JsonNode fill : pot.get("fills")) {
            kcal += 2 * fill.get("energy_kcal").asDouble();
        }
        return kcal;
    }

    @Test
    void new_labels_have_what_is_in_the_container_now() throws IOException {
        keep(BY_CANOLA, CANOLA);

        JsonNode pot = pot("--label-pdf", "labels.pdf", "--labels", "a4-2x4");

        String kcal = Long.toString(
                Math.round(pot.get("fills").get(1).get("energy_kcal").asDouble() / 10) * 10);
        try (var pdf = Loader.loadPDF(here.resolve("labels.pdf").toFile())) {
            String text = new PDFTextStripper().getText(pdf).replace('\u00a0', ' ');
            assertThat(text).contains("Lifter, gaining", "Tagine 375 g, couscous", "in all", "2 of 2", kcal + " kcal");
        }
    }

    /** A plan that names a food which the dish does not have: it was written anew since. */
    @Test
    void a_dish_that_was_written_anew_is_refused() throws IOException {
        keep(BY_CANOLA, CANOLA + ", { \"food\": \"white_rice\", \"grams\": 40 }");

        Cli.Result result = Cli.in(here).run("book filled chickpea_tagine --pot-with-lid 3.4kg --pot 1.9kg".split(" "));

        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("with foods that its file does not have any more");
    }

    @Test
    void labels_need_the_weight_of_the_pot() {
        Cli.Result result = Cli.in(here).run("book filled as planned --label-pdf labels.pdf".split(" "));

        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("the weight of the full pot");
    }
}
