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

/** What is said of food at home that a plan leaves: how much, by when, and dishes that would use it. */
class UseUpShownTest {
    @TempDir
    Path here;

    @BeforeEach
    void starter() throws IOException {
        Folders.starter(here);
        Path pantry = here.resolve("profiles/pantry.csv");
        Files.writeString(
                pantry,
                Files.readString(pantry).stripTrailing()
                        + "\negg,8 large,,2026-11-28\nrice_noodles,200,,2026-11-28\npear,400,,2026-11-28\n");
    }

    private Cli.Result plan(String... more) {
        List<String> args = new ArrayList<>(
                List.of("plan", "lifter-gaining", "--budget", "60", "--cook", "chickpea_tagine,tuna_bean_pasta"));
        args.addAll(List.of(more));
        return Cli.in(here).run(args.toArray(new String[0]));
    }

    /** Eight eggs of 50 g, 12 % of their weight shell: 454.5 g. Pears are in a dish that keeps 3 days and does not freeze. */
    @Test
    void it_is_counted_as_it_is_at_home_with_dishes_that_use_it() {
        assertThat(plan().flat())
                .contains("455 g egg (8 large) by 2026-11-28")
                .contains(
                        "Dishes with egg: egg_muffins, cottage_pancakes. Try: plan lifter-gaining --days 5 --budget 60.00"
                                + " --cook egg_muffins,")
                .contains("Dishes with rice noodles: tofu_peanut_noodles. Try: ")
                .contains("400 g pear")
                .doesNotContain("Dishes with pear");
    }

    @Test
    void the_command_to_try_can_be_tried() {
        String flat = plan().flat();
        String command = flat.replaceAll(".*Dishes with egg: [^.]*\\. Try: (plan .*?) Dishes with .*", "$1");

        Cli.Result tried =
                Cli.in(here).run(command.replace("--budget 60.00 ", "").split(" ", -1));

        assertThat(tried.code()).isZero();
        assertThat(tried.flat()).contains("(egg_muffins): ").doesNotContain("egg (8 large)");
    }

    @Test
    void a_script_reads_the_same() {
        JsonNode useUp = Shape.parse(plan("--json").out()).get("use_up");

        assertThat(useUp).hasSize(3);
        assertThat(useUp.get(0).get("dishes")).hasSize(2);
        assertThat(useUp.get(1).at("/dishes/0").textValue()).isEqualTo("tofu_peanut_noodles");
        assertThat(useUp.get(2).get("dishes")).isEmpty();
    }

    @Test
    void a_dish_that_the_eater_avoids_is_not_named() throws IOException {
        Path profile = here.resolve("profiles/lifter-gaining.yaml");
        Files.writeString(
                profile,
                Files.readString(profile)
                        .replaceFirst("avoid: .*", "avoid: [sesame, tofu_peanut_noodles, egg_muffins]"));

        assertThat(plan().flat())
                .contains("Dishes with egg: cottage_pancakes")
                .doesNotContain("egg_muffins", "Dishes with rice noodles");
    }
}
