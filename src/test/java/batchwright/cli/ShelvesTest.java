package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Dishes in folders of their own: listed, copied, cooked when asked for, and else not. */
class ShelvesTest {
    @TempDir
    Path here;

    @BeforeEach
    void starter() throws IOException {
        Folders.starter(here);
    }

    private Cli.Result run(String... args) {
        return Cli.in(here).run(args);
    }

    private Cli.Result plan(String... more) {
        List<String> args =
                new ArrayList<>(List.of("plan", "lifter-gaining", "--days", "2", "--date", "2026-11-25", "--json"));
        args.addAll(List.of(more));
        return run(args.toArray(String[]::new));
    }

    private static Set<String> cooked(Cli.Result plan) {
        var dishes = new TreeSet<String>();
        for (JsonNode batch : Shape.parse(plan.out()).get("batches")) {
            dishes.add(batch.get("dish").asText());
        }
        return dishes;
    }

    @Test
    void a_kitchen_of_ones_own_has_them_and_lists_them() {
        assertThat(here.resolve("foods/dishes/no_cook/tuna_bean_box.yaml")).exists();
        assertThat(run("check").err()).isEmpty();
        assertThat(run("dishes").out()).contains("Shelf no_cook").contains("tuna_bean_box");
        for (JsonNode dish : Shape.parse(run("dishes", "--json").out()).get("dishes")) {
            String shelf = dish.get("shelf").asText();
            String folder = shelf.equals("everyday") ? "" : shelf + "/";
            assertThat(here.resolve("foods/dishes/" + folder + dish.get("dish").asText() + ".yaml"))
                    .exists();
        }
    }

    @Test
    void a_shelf_that_is_named_is_cooked_from() {
        assertThat(cooked(plan("--shelves", "no_cook"))).isSubsetOf("chickpea_cottage_box", "tuna_bean_box");
    }

    @Test
    void a_dish_that_is_named_is_cooked_whatever_its_shelf() {
        assertThat(cooked(plan("--cook", "red_lentil_soup,turkey_chili", "--with", "red_lentil_soup")))
                .contains("red_lentil_soup");
    }

    @Test
    void a_shelf_that_there_is_not_is_refused_with_the_nearest() {
        assertThat(plan("--shelves", "soup").err())
                .contains("there is no shelf called \"soup\"")
                .contains("Nearest: soups.");
    }

    @Test
    void a_name_on_two_shelves_is_an_error() throws IOException {
        Files.copy(
                here.resolve("foods/dishes/soups/red_lentil_soup.yaml"),
                here.resolve("foods/dishes/vegan/red_lentil_soup.yaml"));

        assertThat(run("check").err())
                .contains("foods/dishes/vegan/red_lentil_soup.yaml")
                .contains("on another shelf");
    }
}
