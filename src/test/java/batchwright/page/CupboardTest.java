package batchwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is entered before the cupboard stands in the files as the commands would write it, and nothing else changes. */
class CupboardTest {
    private static OpenedPage page;

    @BeforeAll
    static void open(@TempDir Path folder) throws IOException {
        page = OpenedPage.small(folder).enter();
    }

    @AfterAll
    static void close() {
        page.close();
    }

    @Test
    void what_was_counted_is_at_home() throws IOException {
        assertThat(page.post("/cupboard/counted", "food", "couscous", "grams", "350 g", "until", "2026-12-24")
                        .body())
                .contains("350 g, use by Thu 24 Dec");
        assertThat(page.file("profiles/book.txt")).contains("2026-11-30 counted 350 g couscous until 2026-12-24");
    }

    @Test
    void a_price_changes_one_line_and_no_other() throws IOException {
        List<String> before = page.file("foods/shop.csv").lines().toList();
        HttpResponse<String> answer =
                page.post("/cupboard/price", "food", "egg", "pack", "682 g", "price", "3.10", "shop", "corner market");

        assertThat(answer.body()).contains("of the table of prices is now: egg");
        List<String> after = page.file("foods/shop.csv").lines().toList();
        assertThat(after.stream().filter(line -> !before.contains(line)).toList())
                .singleElement()
                .asString()
                .startsWith("egg,");
        assertThat(before.stream().filter(line -> !after.contains(line)).count())
                .isLessThanOrEqualTo(1);
    }

    @Test
    void what_is_wrong_stays_typed_and_nothing_is_written() throws IOException {
        String before = page.file("foods/shop.csv");
        HttpResponse<String> answer = page.post(
                "/cupboard/price", "food", "egg", "pack", "a dozen", "price", "3.10", "shop", "corner market");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("value=\"a dozen\"", "value=\"3.10\"", "There is a problem");
        assertThat(page.file("foods/shop.csv")).isEqualTo(before);
    }

    private static final String[] DISH = {
        "name",
        "Bean rice",
        "containers",
        "4",
        "kind",
        "main",
        "days",
        "",
        "freezes",
        "",
        "ingredients",
        "400 g brown rice\r\n2 cans kidney beans\r\n400 g ground beef\r\n10 g salt",
        "steps",
        "Boil the rice for 25 minutes.\r\nBrown the beef, add the rest, simmer for 20 minutes."
    };

    @Test
    void a_dish_of_one_s_own_is_looked_at_and_then_written() throws IOException {
        assertThat(page.get("/cupboard/dish").body()).contains("<textarea id=\"ingredients\"", "A dish of your own");
        HttpResponse<String> looked = page.post("/cupboard/dish", DISH);

        assertThat(looked.statusCode()).isEqualTo(200);
        assertThat(looked.body())
                .contains(
                        "Brown rice, long grain: 400 g, boiled to 1187 g.",
                        "One container: ",
                        "Write it",
                        "400 g brown rice");
        assertThat(page.folder.resolve("foods/dishes/bean_rice.yaml")).doesNotExist();

        List<String> all = new java.util.ArrayList<>(List.of(DISH));
        all.addAll(List.of("write", "yes"));
        assertThat(page.post("/cupboard/dish", all.toArray(new String[0])).body())
                .contains("Written: ");
        assertThat(page.file("foods/dishes/bean_rice.yaml")).contains("brown_rice: 100 g, boiled", "by_itself: 25");
        assertThat(page.post("/cupboard/dish", DISH).body())
                .contains("There is a dish or a food called bean_rice already");
    }

    @Test
    void a_wrong_dish_keeps_what_was_typed() {
        HttpResponse<String> answer = page.post(
                "/cupboard/dish",
                "name",
                "Odd <b>one",
                "containers",
                "many",
                "ingredients",
                "500 g unobtainium\n300 g brown rice",
                "steps",
                "");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("value=\"many\"", "Enter a whole number of containers", "500 g unobtainium\n300 g brown rice")
                .contains("Your tables have no", "Odd &lt;b>one")
                .doesNotContain("Odd <b>one");
    }

    @Test
    void a_label_is_one_line_more() throws IOException {
        String before = page.file("foods/labels.csv");
        String[] label = {
            "name", "Oat, nut bar", "group", "sweet", "label", "eu", "per", "1 bar = 45 g", "energy",
                    "687 kJ / 164 kcal",
            "fat_g", "5.5", "carbohydrate_g", "14", "protein_g", "15", "fibre_g", "4", "salt_or_sodium", "0.25 g salt",
            "allergens", "milk tree_nut gluten"
        };
        assertThat(page.post("/cupboard/label", label).body()).contains("Added to your labels as oat_nut_bar");
        String after = page.file("foods/labels.csv");
        assertThat(after).startsWith(before);
        assertThat(after.substring(before.length()))
                .startsWith(
                        "oat_nut_bar,\"Oat, nut bar\",sweet,eu,1 bar = 45 g,687 kJ / 164 kcal,5.5,,14,,4,15,0.25 g salt,")
                .hasLineCount(1);
        assertThat(page.get("/cupboard").body()).contains("Oat, nut bar");

        label[11] = "a lot";
        label[1] = "Other bar";
        HttpResponse<String> wrong = page.post("/cupboard/label", label);
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("value=\"a lot\"", "href=\"#fat_g\"");
        assertThat(page.file("foods/labels.csv")).isEqualTo(after);
    }

    @Test
    void the_stove_changes_its_line_and_no_comment() throws IOException {
        List<String> before = page.file("foods/kitchen.yaml").lines().toList();
        assertThat(page.get("/cupboard/kitchen").body()).contains("value=\"9.9, 5.4, 3.0\"");
        String[] fields = {
            "burners",
            "2",
            "burner_kw",
            "1.2",
            "ovens",
            "1",
            "shelves",
            "2",
            "pots",
            "9.9, 5.4, 3.0",
            "pans",
            "2.3, 2.3",
            "cooks",
            "1",
            "air_fryer",
            "4.5"
        };
        assertThat(page.post("/cupboard/kitchen", fields).body()).contains("Written into");
        List<String> after = page.file("foods/kitchen.yaml").lines().toList();
        assertThat(after.stream().filter(line -> !before.contains(line)).toList())
                .containsExactly("burners: 2                # 0 where there is none", "air_fryer: 4.5");
        assertThat(before.stream().filter(line -> !after.contains(line)).toList())
                .hasSize(1);

        fields[1] = "lots";
        HttpResponse<String> wrong = page.post("/cupboard/kitchen", fields);
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("value=\"lots\"", "href=\"#burners\"");
        assertThat(page.file("foods/kitchen.yaml").lines().toList()).isEqualTo(after);
    }
}
