package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Containers that one eater has too many of are eaten by another who has too few and may have them. */
@Timeout(300)
class ContainersOfOthersTest {
    private static final String COOK = " --cook chickpea_tagine";
    private static final String BOTH = "plan parent-holding grandpa";

    @TempDir
    Path here;

    /** On the third of four days one of the parent's four is gone, and two are left that Grandpa did not eat. */
    @BeforeEach
    void too_few_and_too_many() throws IOException {
        Folders.starter(here);
        Path parent = here.resolve("profiles/parent-holding.yaml");
        Folders.replace(parent, "avoid: [peanut]", "avoid: [peanut]\nsnacks:\n  only: [banana, whole_milk, almonds]");
        Path grandpa = here.resolve("profiles/grandpa.yaml");
        Files.copy(parent, grandpa);
        Folders.replace(grandpa, "eater: parent-holding", "eater: grandpa");
        Files.writeString(here.resolve("profiles/book.txt"), """
                # batchwright book 1
                2026-11-29 bought 4 x 1000 g whole_milk
                2026-11-29 bought 4 x 1000 g low_fat_milk
                2026-11-29 cooked chickpea_tagine
                2026-11-29 filled 3 chickpea_tagine for parent-holding in fridge until 2026-12-02, 929 kcal, 33 g protein
                2026-11-29 filled 6 chickpea_tagine for grandpa in fridge until 2026-12-02, 929 kcal, 33 g protein
                """);
    }

    private Cli.Result run(String command) {
        return Cli.in(here).run((command + " --date 2026-12-01").split(" "));
    }

    private JsonNode plan(String more) {
        Cli.Result result = run(BOTH + " --json" + more);
        assertThat(result.code()).as(result.err()).isZero();
        return Shape.parse(result.out());
    }

    @Test
    void by_the_rest_of_a_plan_by_today_and_by_the_book() {
        assertThat(run(BOTH + " --days 2 --leave-containers --keep" + COOK).code())
                .isZero();
        JsonNode plan = plan(" --rest --keep" + COOK);

        assertThat(plan.get("batches")).isEmpty();
        JsonNode given = plan.get("rest").get("given").get(0);
        assertThat(given.get("of").asText()).isEqualTo("grandpa");
        assertThat(given.get("eater").asText()).isEqualTo("parent-holding");
        assertThat(given.get("count").asInt()).isEqualTo(1);
        assertThat(plan.get("left_besides").get(0).get("count").asInt()).isEqualTo(1);
        assertThat(run("today").out()).contains("1 x chickpea_tagine of grandpa");
        assertThat(run("book ate parent-holding as planned").out())
                .contains("ate parent-holding 1 chickpea_tagine of grandpa");
        assertThat(run("check").err()).doesNotContain("there is no container");
    }

    @Test
    void on_whole_days_before_a_plan() {
        JsonNode plan = plan(" --days 2" + COOK);

        assertThat(plan.get("status").asText()).isEqualTo("nothing_to_cook");
        assertThat(plan.get("eaten_first")).hasSize(4);
        assertThat(plan.get("eaten_first").toString()).contains("grandpa");
        assertThat(plan.get("left_besides").get(0).get("count").asInt()).isEqualTo(1);
    }

    /** With what is in it by recipe, and by the book alone. */
    @Test
    void not_by_who_avoids_something_in_it() throws IOException {
        Path book = here.resolve("profiles/book.txt");
        Folders.replace(book, "cooked chickpea_tagine", "cooked chickpea_tagine from 900 g chickpeas, 200 g mushroom");
        Folders.replace(here.resolve("profiles/parent-holding.yaml"), "avoid: [peanut]", "avoid: [peanut, mushroom]");

        assertThat(plan(" --days 2" + COOK).get("eaten_first")).hasSize(2);
    }

    /** A container for somebody who eats twice as much. */
    @Test
    void not_where_it_breaks_a_limit_on_containers() throws IOException {
        Folders.replace(
                here.resolve("profiles/book.txt"),
                "grandpa in fridge until 2026-12-02, 929 kcal",
                "grandpa in fridge until 2026-12-02, 1900 kcal");

        assertThat(plan(" --days 2" + COOK).get("eaten_first")).hasSize(2);
    }
}
