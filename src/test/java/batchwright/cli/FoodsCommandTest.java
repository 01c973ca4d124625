package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Foods searched, taken over and compared. */
class FoodsCommandTest {
    @TempDir
    Path here;

    @Test
    void a_search_counts_both_tables_and_shows_the_best() {
        Cli.Result result = run("foods", "oats");

        assertThat(result.code()).isZero();
        assertThat(result.out()).startsWith("2 foods of your catalogue and 25 of USDA SR28 match \"oats\".");
        assertThat(result.flat())
                .contains("the first 15 of 25", "= rolled_oats", "foods --take 20038", "--all shows all");
        assertThat(rows(result)).hasSize(15);
        assertThat(rows(run("foods", "oats", "--all"))).hasSize(25);
        assertThat(run("foods", "oats", "--all").out()).doesNotContain("--all", "the first");
    }

    private static List<String> rows(Cli.Result result) {
        return result.out().lines().filter(line -> line.matches("\\d{5}  .*")).toList();
    }

    @Test
    void a_food_of_sr28_alone() {
        assertThat(run("foods", "millet", "raw").flat())
                .startsWith("No food of your catalogue and 1 of USDA SR28 match")
                .contains("20031 Millet, raw 378 11.0 4.2 72.9");
        assertThat(run("foods", "brocoli", "raw").out()).contains("11090");
    }

    @Test
    void nothing_found_names_the_nearest_words() {
        Cli.Result result = run("foods", "xaubergenesx");

        assertThat(result.code()).isZero();
        assertThat(result.out())
                .startsWith("No food has the words \"xaubergenesx\".")
                .contains("try another one");
        assertThat(run("foods", "chikcpaes", "boild").out()).contains("chickpeas_cooked");
    }

    @Test
    void what_no_table_has_is_said_and_the_nearest_shown() {
        assertThat(run("foods", "halloumi").flat())
                .startsWith("There is no \"halloumi\" here. Nearest: feta cheese. It is not the same food.");
        assertThat(run("foods", "lentils", "qwertz").flat())
                .startsWith("No food has all of \"lentils qwertz\". Nearest: lentils, dry.");
        JsonNode json = json("foods", "halloumi", "--json");
        assertThat(json.get("match").asText()).isEqualTo("nearest");
        assertThat(json.get("best").get("food").asText()).isEqualTo("feta");
    }

    @Test
    void json_of_a_search() {
        JsonNode json = json("foods", "oats", "--json");

        Shape.check(json, """
                {"schema": "=batchwright.foods/1", "foods": [{"food": "text"}], "sr28": {"count": "whole", "foods":
                [{"ndb": "text", "description": "text", "group": "text", "food": "text?", "per_100_g": {"protein_g": "number?"}}]}}""");
        assertThat(json.get("sr28").get("count").intValue()).isEqualTo(25);
        assertThat(json.get("sr28").get("foods")).hasSize(15);
        assertThat(json("foods", "oats", "--all", "--json").get("sr28").get("foods"))
                .hasSize(25);
    }

    /** A question about foods does not open the dishes: what is wrong there is told by check, dishes and plan. */
    @Test
    void a_broken_dish_is_not_in_the_way() throws IOException {
        Folders.starter(here);
        Files.writeString(here.resolve("foods/dishes/lentil_ragu.yaml"), "dish: [\n");

        assertThat(run("foods", "oats").code()).isZero();
        assertThat(run("foods", "oats").err()).isEmpty();
        assertThat(run("check").code()).isEqualTo(2);
    }

    @Test
    void taken_lines_are_right_when_pasted() throws IOException {
        Folders.starter(here);
        Cli.Result result = run("foods", "--take", "20031", "1021", "20031", "12167");
        assertThat(result.code()).isZero();
        String[] blocks = result.out().split("\n\n", -1);

        append("foods/catalogue.csv", blocks[0] + "\n");
        append("foods/measures.csv", blocks[1]);

        assertThat(run("check").both()).isEmpty();
        assertThat(run("foods", "millet").out()).startsWith("Millet, raw (millet): 378 kcal and 11.0 g protein");
        assertThat(run("foods", "millet", "raw").flat()).contains("Millet, raw = millet");
        assertThat(run("foods", "gjetost_cheese").flat()).contains("Allergens: milk.", "no. 01021");
        assertThat(blocks[0]).contains("# check millet: allergens: none seen").containsOnlyOnce("\nmillet,");
    }

    private void append(String file, String text) throws IOException {
        Files.writeString(here.resolve(file), Files.readString(here.resolve(file)) + text);
    }

    @Test
    void a_food_that_is_there_already_is_named_and_gets_another_id() {
        assertThat(run("foods", "--take", "20044").out())
                .contains("# note: 20044 is in your catalogue already: white_rice\n", "\nwhite_rice_2,");
        JsonNode json = json("foods", "--take", "20044", "--json");
        Shape.check(json, """
                {"schema": "=batchwright.take/1", "foods": [{"ndb": "=20044", "food": "=white_rice_2", "yours": "=white_rice",
                "check": ["text"], "catalogue_line": "text", "measures_lines": ["text"]}]}""");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        foods --take                  | no food is named               | 20031
        foods --take 99999            | no food 99999 in USDA SR28     | trade name
        foods --take 200310           | no food 200310 in USDA SR28    | foods WORDS
        foods --take milk             | "milk" is no NDB number        | foods WORDS
        foods --take 20031 --compare  | --take cannot be used with      | Write it alone
        foods oats --by protein       | --by needs --compare           | foods --compare --by protein
        foods --compare --by fat      | --by cannot be "fat"           | --by kcal or --by protein
        foods --all                   | --all needs words to search    | foods yogurt --all
        """)
    void what_does_not_go_together(String line, String wrong, String cure) {
        Cli.Result result = run(line.split(" ", -1));

        assertThat(result.code()).isEqualTo(2);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).startsWith("error: ").contains(wrong, cure);
    }

    @Test
    void compare_ranks_by_energy_or_protein() {
        for (String by : List.of("kcal", "protein")) {
            JsonNode json = json("foods", "--compare", "--by", by, "--json");
            String column = by.equals("kcal") ? "per_1000_kcal_minor" : "per_30_g_protein_minor";
            List<Long> prices = new ArrayList<>();
            json.get("foods")
                    .forEach(f -> prices.add(
                            f.get(column).isNull()
                                    ? Long.MAX_VALUE
                                    : f.get(column).longValue()));

            assertThat(prices).hasSizeGreaterThan(100).isSorted();
            assertThat(json.get("by").textValue()).isEqualTo(by);
            assertThat(json.get("cheapest")).hasSameSizeAs(json.get("foods"));
            assertThat(json.get("no_price").size() + json.get("foods").size())
                    .isEqualTo(json("foods", "--json").get("foods").size());
        }
    }

    @Test
    void compare_says_which_pack_and_counts_what_has_no_price() throws IOException {
        Folders.starter(here);
        Path shop = here.resolve("foods/shop.csv");
        Files.writeString(
                shop,
                String.join(
                        "\n",
                        Files.readAllLines(shop).stream()
                                .filter(line -> !line.startsWith("lentils,"))
                                .toList()));

        String out = run("foods", "--compare", "legume", "--by", "protein").flat();

        assertThat(out).contains("cheapest for 30 g protein: pinto beans, dry", "pinto_beans 1.01 0.49 bag");
        assertThat(out).contains("2026-11-21", "corner");
        assertThat(out).containsPattern("foods without a price in foods/shop.csv: .*\\blentils\\b");
        assertThat(run("foods", "--compare", "qwertz").out())
                .isEqualTo("No food of your catalogue has all the words \"qwertz\".\n");
    }

    @Test
    void compare_takes_foods_of_any_word_when_none_has_all() {
        String out = run("foods", "--compare", "lentils", "rice").flat();

        assertThat(out)
                .startsWith("No food of your catalogue has all the words \"lentils rice\". These have one of them.")
                .contains(" lentils ", " white_rice ");
        assertThat(run("foods", "--compare", "white", "rice").flat())
                .contains(" white_rice ")
                .doesNotContain("lentils", "These have one");
    }

    @Test
    void british_words_find_the_food() {
        assertThat(run("foods", "minced", "beef").flat()).contains("ground_beef_93", "Beef, ground, 93%");
        assertThat(run("foods", "aubergine").flat()).contains("eggplant", "Eggplant, raw");
    }

    private Cli.Result run(String... args) {
        return Cli.in(here).run(args);
    }

    private JsonNode json(String... args) {
        return Shape.parse(run(args).out());
    }
}
