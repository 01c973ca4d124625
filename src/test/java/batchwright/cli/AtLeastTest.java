package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where the catalogue has no value for a food, a total says that it is at least so much. */
class AtLeastTest {
    private static final String NOTE = ">= means at least";

    @TempDir
    Path here;

    /** Takes away the fibre of one food in the starter files. */
    private void forgetFibre(String food) throws IOException {
        Path catalogue = Folders.starter(here).resolve("foods/catalogue.csv");
        List<String> lines = new ArrayList<>(Files.readAllLines(catalogue));
        String header =
                lines.stream().filter(l -> l.startsWith("food,")).findFirst().orElseThrow();
        List<String> columns = Arrays.asList(header.split(",", -1));
        int fromEnd = columns.size() - columns.indexOf("FIBTG"); // descriptions in front may hold commas
        lines.replaceAll(line -> line.startsWith(food + ",") ? emptied(line, fromEnd) : line);
        Files.write(catalogue, lines);
    }

    private static String emptied(String line, int fromEnd) {
        String[] cells = line.split(",", -1);
        cells[cells.length - fromEnd] = "";
        return String.join(",", cells);
    }

    @Test
    void a_plan_says_so_in_its_days_and_in_json() throws IOException {
        forgetFibre("crushed_tomatoes");
        Folders.keepDishes(here, "lentil_ragu"); // so that it is quickly proven
        String[] plan = {"plan", "parent-holding", "--days", "2", "--dishes", "1"};

        Cli.Result result = Cli.in(here).run(plan);

        assertThat(result.code()).as(result.both()).isZero();
        assertThat(result.out())
                .containsPattern("\n  day 1 .*>=\\d+  +>=[+-]\\d+")
                .contains(NOTE);
        assertThat(result.out().lines()).allMatch(line -> line.length() <= 80);
        String[] json = Arrays.copyOf(plan, plan.length + 1);
        json[plan.length] = "--json";
        JsonNode totals = Shape.parse(Cli.in(here).run(json).out()).at("/eaters/0/days/0/totals");
        assertThat(totals.get("incomplete").toString()).isEqualTo("[\"fibre_g\"]");
    }

    @Test
    void a_dish_says_so_unless_the_part_is_left_out() throws IOException {
        assertThat(Cli.in(here).run("dishes", "lentil_ragu").out()).doesNotContain(">=");
        forgetFibre("parmesan");

        String out = Cli.in(here).run("dishes", "lentil_ragu").out();

        assertThat(out).contains(NOTE);
        List<String> rows =
                out.lines().filter(l -> l.matches("  (least|middle|most) .*")).toList();
        assertThat(rows).hasSize(6);
        assertThat(rows).filteredOn(row -> row.contains("without")).noneMatch(row -> row.contains(">="));
        assertThat(rows).filteredOn(row -> !row.contains("without")).allMatch(row -> row.contains(">="));
    }
}
