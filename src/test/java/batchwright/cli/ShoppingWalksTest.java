package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Users who shop, from their files to what they read. */
class ShoppingWalksTest {
    private static final String DATE = "2026-11-25";
    private static final String[] RAGU = {"parent-holding", "--days", "2", "--cook", "lentil_ragu,rice_pudding"};

    @TempDir
    Path here;

    @BeforeEach
    void starter() {
        Folders.starter(here);
    }

    private Cli.Result plan(String[] wanted, String... more) {
        List<String> all = new ArrayList<>(List.of("plan"));
        all.addAll(List.of(wanted));
        all.addAll(List.of(more));
        all.addAll(List.of("--date", DATE));
        return Cli.in(here).run(all.toArray(String[]::new));
    }

    private void pantry(String line) throws IOException {
        Files.writeString(here.resolve("profiles/pantry.csv"), "food,grams,note\n" + line + "\n");
    }

    private void append(String path, String line) throws IOException {
        Path file = here.resolve(path);
        Files.writeString(file, Files.readString(file) + line + "\n");
    }

    private static List<String> bought(JsonNode answer) {
        List<String> foods = new ArrayList<>();
        answer.get("shopping").forEach(line -> {
            if (line.get("packs").intValue() > 0) {
                foods.add(line.get("food").asText());
            }
        });
        return foods;
    }

    /** Canola oil and sugar are at home: no bottle of olive oil is bought for 35 g, no honey for 16 g. */
    @Test
    void no_pack_for_a_spoonful_of_what_has_an_equivalent_at_home() throws IOException {
        pantry("canola_oil,500,\nsugar,500,");

        String[] two = {
            "parent-holding",
            "--days",
            "2",
            "--cook",
            "lentil_ragu,salmon_barley",
            "--with",
            "lentil_ragu,salmon_barley"
        };

        JsonNode answer = Shape.parse(plan(two, "--json").out());
        String text = plan(two).flat();

        assertThat(bought(answer)).contains("lentils").doesNotContain("olive_oil", "honey", "canola_oil", "sugar");
        assertThat(text)
                .contains("Not as written: canola oil in place of olive oil.")
                .contains("white sugar in place of honey")
                .doesNotContain(" g olive oil", " g honey");
        assertThat(answer.at("/batches/0/swaps/0/food").asText()).isEqualTo("olive_oil");
        assertThat(answer.at("/batches/0/swaps/0/by").asText()).isEqualTo("canola_oil");
    }

    /** With olive oil and honey at home the dishes are cooked as they are written. */
    @Test
    void nothing_is_swapped_where_the_recipe_needs_no_pack() throws IOException {
        pantry("olive_oil,500,\nhoney,500,");

        String text = plan(RAGU).flat();

        assertThat(text).doesNotContain("Not as written");
    }

    /** What may be left out is left out before a pack is bought for it, and its allergen with it. */
    @Test
    void a_garnish_is_left_out_and_so_is_its_allergen() throws IOException {
        Path dish = here.resolve("foods/dishes/lentil_ragu.yaml");
        Files.writeString(
                dish,
                Files.readString(dish)
                        .replace("garlic: 4 g", "garlic: 4 g\n      sesame_seeds: 3 g, or leave out")
                        .replace("onion, garlic]", "onion, garlic, sesame_seeds]"));
        pantry("canola_oil,500,");
        String[] ragu = {"parent-holding", "--days", "2", "--cook", "lentil_ragu,rice_pudding", "--with", "lentil_ragu"
        };

        JsonNode answer = Shape.parse(plan(ragu, "--json").out());
        String text = plan(ragu).flat();

        assertThat(Cli.in(here).run("check").out()).isEmpty();
        assertThat(Cli.in(here).run("dishes", "lentil_ragu").flat())
                .contains("sesame seeds 3 g, or left out", "olive oil 8 g (1 3/4 tsp), or canola oil");
        assertThat(bought(answer)).doesNotContain("sesame_seeds");
        assertThat(text).contains("no sesame seeds").doesNotContain("g sesame seeds", "sesame,", "sesame.");
    }

    /** A trip costs 20.00: nothing is worth a second shop. */
    @Test
    void a_second_shop_is_worth_it_only_if_it_saves_more_than_the_trip() throws IOException {
        String[] two = {"parent-holding", "--days", "3", "--cook", "tofu_peanut_noodles,lentil_ragu,rice_pudding"};
        append("foods/kitchen.yaml", "trip: 20.00");

        JsonNode answer = Shape.parse(plan(two, "--json").out());
        String text = plan(two).flat();
        int total = answer.get("cost_minor").intValue();

        assertThat(answer.get("trips_minor").intValue()).isEqualTo(2000);
        assertThat(text).contains("Of it 1 trip to a shop 20.00, and food ");
        int lines = 0;
        for (JsonNode line : answer.get("shopping")) {
            lines += line.get("cost_minor").intValue();
        }
        assertThat(total).isEqualTo(lines + 2000);
    }

    @Test
    void only_in_one_shop() {
        JsonNode answer =
                Shape.parse(plan(RAGU, "--shops", "Corner Market", "--json").out());

        answer.get("shopping")
                .forEach(line -> assertThat(line.get("shop").asText("")).isIn("corner market", "null", ""));
        assertThat(plan(RAGU, "--shops", "cornermarket").err())
                .contains("there is no shop called \"cornermarket\"", "Nearest: corner market.");
    }

    /** The one shop does not sell enough: to go to the other is among the cures. */
    @Test
    void a_shop_that_is_not_enough() {
        Cli.Result result = plan(RAGU, "--shops", "warehouse", "--json");

        assertThat(result.code()).isEqualTo(3);
        assertThat(plan(RAGU, "--shops", "warehouse").flat())
                .contains("Shops: only warehouse is gone to.", "go to corner market, too");
    }

    /** Shopping is in packs, bunches and pieces; cups are for the cook. */
    @Test
    void no_cups_in_a_shopping_list() throws IOException {
        String[] stew = {
            "lifter-gaining", "--days", "4", "--cook", "peanut_stew,overnight_oats", "--with", "peanut_stew"
        };

        Path note = here.resolve("list.txt");
        String text = plan(stew, "--shopping", note.toString()).out();
        String list = Files.readString(note);

        assertThat(list).contains("bunch").doesNotContain(" cup");
        assertThat(text.substring(text.indexOf("BUY: ")))
                .contains("bunch 280 g")
                .doesNotContain(" cup");
    }
}
