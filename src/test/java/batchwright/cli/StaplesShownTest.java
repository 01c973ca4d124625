package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Allergens of staples, from the file of a dish to what is served. */
class StaplesShownTest {
    @TempDir
    Path here;

    @BeforeEach
    void starter() {
        Folders.starter(here);
    }

    private Cli.Result run(String... args) {
        return Cli.in(here).run(args);
    }

    private void staplesOfRagu(String staples) throws IOException {
        Path ragu = here.resolve("foods/dishes/lentil_ragu.yaml");
        Files.writeString(
                ragu,
                Files.readString(ragu)
                        .replaceAll("(?m)^    with:.*\n", "")
                        .replaceFirst("(?m)^staples: .*$", "staples: [" + staples + "]"));
    }

    @Test
    void a_dish_names_the_staple_that_brings_an_allergen() throws IOException {
        staplesOfRagu("soy sauce, tahini, mustard, worcestershire sauce, butter, peanut oil");

        assertThat(run("dishes", "lentil_ragu").flat())
                .contains("Milk, egg, fish (worcestershire sauce), peanut (peanut oil), wheat, gluten,"
                        + " soy (soy sauce), sesame (tahini), mustard (mustard).")
                .contains("those of what is always at home too");
        assertThat(run("dishes", "lentil_ragu", "--json").out())
                .contains("\"staple_allergens\"", "\"soy sauce\"", "\"mustard\"");
    }

    /** Parts share a kitchen, so the allergen stays among the cautions; where it is nowhere in the boxes that is said. */
    @Test
    void an_allergen_of_parts_left_out_is_said_to_be_so() {
        assertThat(run("dishes", "lentil_ragu", "--kcal", "600", "--without", "parmesan")
                        .flat())
                .contains("parmesan: milk (parmesan, left out of every container), egg (parmesan, left out of every"
                        + " container), wheat, gluten.");
        assertThat(run("dishes", "lentil_ragu", "--kcal", "600", "--with", "parmesan")
                        .flat())
                .contains("parmesan: milk, egg, wheat, gluten.");
    }

    @Test
    void who_avoids_it_is_not_served_and_the_others_are_told() throws IOException {
        Path profile = here.resolve("profiles/lifter-gaining.yaml");
        String[] plan = {"plan", "lifter-gaining", "--cook", "split_pea_dal,turkey_chili", "--days", "2"};
        String before = run(plan).flat();
        assertThat(before).contains("(split_pea_dal)", "mustard (mustard seeds)");

        Folders.replace(profile, "avoid: []", "avoid: [mustard]");

        assertThat(run(plan).flat()).doesNotContain("(split_pea_dal)");
    }
}
