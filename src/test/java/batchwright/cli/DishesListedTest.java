package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The list of dishes says how long each takes, what on and what it costs, and is sorted by any of it. */
class DishesListedTest {
    @TempDir
    Path here;

    @BeforeEach
    void init() throws IOException {
        Folders.starter(here);
    }

    private List<JsonNode> dishes(String... more) {
        List<String> all = new ArrayList<>(List.of("dishes", "--json"));
        all.addAll(List.of(more));
        JsonNode root = Shape.parse(Cli.in(here).run(all.toArray(new String[0])).out());
        return StreamSupport.stream(root.get("dishes").spliterator(), false).toList();
    }

    private static int cost(JsonNode dish) {
        return StreamSupport.stream(dish.get("containers").spliterator(), false)
                .filter(c -> c.get("size").textValue().equals("middle")
                        && c.get("optional_parts").booleanValue())
                .mapToInt(c -> c.get("cost_minor").intValue())
                .sum();
    }

    @Test
    void sorted_by_cost_and_by_hands() {
        assertThat(dishes("--sort", "cost"))
                .hasSize(33)
                .isSortedAccordingTo(Comparator.comparingInt(DishesListedTest::cost));
        assertThat(dishes("--sort", "hands"))
                .isSortedAccordingTo(
                        Comparator.comparingInt(d -> d.get("hands_on_minutes").intValue()));
        assertThat(dishes())
                .isSortedAccordingTo(Comparator.comparing(d -> d.get("dish").textValue()));
        assertThat(Cli.in(here).run("dishes", "--sort", "colour").both()).contains("Write one of name, time, hands");
    }

    /** The figures of the list are those of the dish alone. */
    @Test
    void the_line_says_what_the_dish_says() {
        String list = Cli.in(here).run("dishes", "--sort", "time").out();
        String dish = Cli.in(here).run("dishes", "mustard_pork_tray").flat();
        JsonNode json = dishes().stream()
                .filter(d -> d.get("dish").textValue().equals("mustard_pork_tray"))
                .findFirst()
                .orElseThrow();

        assertThat(dish)
                .contains(json.get("minutes") + " minutes one step after another, " + json.get("hands_on_minutes"));
        assertThat(list)
                .startsWith("33 dishes, by time.")
                .containsPattern("mustard_pork_tray +main +4 +\\d+ +\\d+ +" + json.get("minutes") + " +"
                        + json.get("hands_on_minutes") + " +oven +\\d");
        assertThat(json.get("needs")).hasSize(1);
        assertThat(list.lines()).allMatch(line -> line.length() <= 80);
    }

    /** With an air fryer and without an oven the same step is done on it. */
    @Test
    void what_it_needs_goes_by_the_kitchen() throws IOException {
        assertThat(needs("walnut_chicken")).isEqualTo("[\"burner\",\"oven\"]");
        Files.writeString(here.resolve("foods/kitchen.yaml"), "ovens: 0\nair_fryer: yes\n");
        assertThat(needs("walnut_chicken")).isEqualTo("[\"burner\",\"air_fryer\"]");
    }

    private String needs(String dish) {
        return Shape.parse(Cli.in(here).run("dishes", dish, "--json").out())
                .at("/dishes/0/needs")
                .toString();
    }
}
