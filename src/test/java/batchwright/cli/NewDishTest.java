package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A dish of eleven ingredients by answers alone: no file is opened, and what was written is a dish like any other. */
class NewDishTest {
    private static final String[] CHILI = {
        "Red bean chili with rice",
        "6",
        "",
        "600 g brown rice",
        "900 g ground beef",
        "2 tins kidney beans",
        "1 can crushed tomatoes",
        "3 onions",
        "2 red peppers",
        "4 cloves garlic",
        "2 tbsp olive oil",
        "2 tbsp tomato paste",
        "1 tbsp chili powder",
        "12 g salt",
        "",
        "",
        "Boil the rice for 25 minutes and drain.",
        "Brown the beef in the oil with the chopped onions, garlic and spices.",
        "Add the rest and simmer for 30 minutes.",
        "",
        "",
        "",
        ""
    };
    /** Forty words of five letters a minute, an average typist: common practice. */
    private static final int LETTERS_A_MINUTE = 200;

    @TempDir
    Path here;

    @BeforeEach
    void init() throws IOException {
        Folders.starter(here);
    }

    private Path dish() {
        return here.resolve("foods/dishes/red_bean_chili_with_rice.yaml");
    }

    @Test
    void a_dish_of_eleven_ingredients() throws IOException {
        var result = Cli.in(here).typing(CHILI).run("dishes", "--new");

        assertThat(result.code()).as(result.err()).isZero();
        assertThat(result.err().lines())
                .allMatch(line -> line.replaceFirst("^> ", "").length() <= 80);
        assertThat(Files.readString(dish()))
                .contains(
                        "brown_rice: 100 g, boiled",
                        "ground_beef_93: 150 g, fried",
                        "crushed_tomatoes: 132.3 g",
                        "staples: [chili powder 1.3 g, salt 2 g]",
                        "fridge_days: 3",
                        "by_itself: 25",
                        "part: rice");
        assertThat(Cli.in(here).run("check").both()).isEmpty();
        assertThat(Cli.in(here).run("dishes", "red_bean_chili_with_rice").out())
                .contains("Red bean chili with rice", "only with rice");
        int letters = Arrays.stream(CHILI).mapToInt(line -> line.length() + 1).sum();
        assertThat(letters).as("typed in two minutes").isLessThan(2 * LETTERS_A_MINUTE);
    }

    @Test
    void wrong_answers_are_asked_again() throws IOException {
        var result = Cli.in(here)
                .typing(
                        "lentil ragu",
                        "Oats with banana",
                        "none",
                        "4",
                        "brunch",
                        "breakfast",
                        "rice",
                        "400 g unobtainium",
                        "0 g rolled oats",
                        "2 buckets rolled oats",
                        "400 g rolled oats, grilled",
                        "320 g rolled oats, raw",
                        "50 g sugar",
                        "undo",
                        "1 l apple",
                        "800 g whole milk",
                        "4 bananas",
                        "",
                        "9 in x",
                        "1 fermented",
                        "",
                        "",
                        "8",
                        "",
                        "maybe",
                        "no",
                        "what",
                        "")
                .run("dishes", "--new");

        assertThat(result.code()).as(result.err()).isZero();
        assertThat(result.err().replaceAll("\\s+", " "))
                .contains(
                        "There is a dish or a food called lentil_ragu already",
                        "1 to 40",
                        "Enter breakfast, lunch, dinner",
                        "There is no amount",
                        "Your tables have no \"unobtainium\"",
                        "above 0",
                        "\"grilled\" is not known of rolled oats",
                        "Taken back: 50 g sugar",
                        "Enter a number from the list",
                        "\"fermented\" is not known",
                        "1 to 7",
                        "Enter yes or no",
                        "Enter alone writes it");
        assertThat(Files.readString(here.resolve("foods/dishes/oats_with_banana.yaml")))
                .contains("rolled_oats: 80 g\n", "whole_milk: 200 g", "banana: 118 g", "freezes: no", "Eat cold")
                .doesNotContain("sugar");
        assertThat(Cli.in(here).run("check").both()).isEmpty();
    }

    /** Nothing is there before the last answer, whenever no more is typed. */
    @Test
    void an_end_at_any_place_leaves_nothing() throws IOException {
        List<Path> before = files();
        for (int typed : new int[] {7, CHILI.length - 1}) {
            var result = Cli.in(here).typing(Arrays.copyOf(CHILI, typed)).run("dishes", "--new");
            assertThat(result.code()).isEqualTo(130);
            assertThat(result.err()).contains("nothing was written");
            assertThat(files()).isEqualTo(before);
        }
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.walk(here)) {
            return all.sorted().toList();
        }
    }

    @Test
    void answers_from_a_file_never_over_a_file_and_never_without_a_kitchen(@TempDir Path empty) throws IOException {
        assertThat(Cli.in(empty).typing(CHILI).run("dishes", "--new").both())
                .contains("there is no kitchen of your own here");
        Files.write(here.resolve("answers.txt"), List.of(CHILI));
        assertThat(Cli.in(here)
                        .run("dishes", "--new", "--answers", "answers.txt")
                        .code())
                .isZero();
        String first = Files.readString(dish());
        assertThat(Cli.in(here)
                        .run("dishes", "--new", "--answers", "answers.txt")
                        .both())
                .contains("There is a dish or a food called red_bean_chili_with_rice already");
        assertThat(Files.readString(dish())).isEqualTo(first);
        assertThat(Cli.in(here).run("dishes", "--new").both()).contains("there is nobody to ask");
    }

    /** A food without a price is asked for it, and the price is written last. */
    @Test
    void a_price_on_the_way() throws IOException {
        Path shop = here.resolve("foods/shop.csv");
        Files.write(
                shop,
                Files.readAllLines(shop).stream()
                        .filter(line -> !line.startsWith("couscous,"))
                        .toList());
        var result = Cli.in(here)
                .typing(
                        "Couscous with chickpeas",
                        "4",
                        "",
                        "400 g couscous",
                        "2 cans chickpeas",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "cheap",
                        "1.99 for 500 g at corner market",
                        "")
                .run("dishes", "--new");

        assertThat(result.code()).as(result.err()).isZero();
        assertThat(Files.readString(shop)).contains("couscous,corner market,", ",500 g,1.99,USD,2026-11-25");
    }
}
