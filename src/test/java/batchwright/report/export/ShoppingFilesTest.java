package batchwright.report.export;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.answer.PlanAnswer;
import batchwright.app.WriteStarterFiles;
import batchwright.food.Pack;
import batchwright.food.Step;
import batchwright.plan.Purchase;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.foods.PackText;
import batchwright.report.html.Reports;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Both files of the shopping list against the plan; the table is read back by commons-csv, which is not ours. */
class ShoppingFilesTest {
    private static PlanAnswer answer;
    private static WholePlan plan;

    @BeforeAll
    static void makePlan(@TempDir Path folder) throws IOException {
        new WriteStarterFiles().into(folder);
        Files.copy(
                Path.of("src/test/resources/stocked_pantry.csv"),
                folder.resolve("profiles/pantry.csv"),
                StandardCopyOption.REPLACE_EXISTING);
        answer = Reports.plan(folder, List.of("parent-holding"), List.of("lentil_ragu", "chickpea_tagine"), 3);
        plan = WholePlan.of(answer).orElseThrow();
    }

    static List<CSVRecord> read(String table) throws IOException {
        try (CSVParser parser = CSVParser.parse(table, CsvTest.format())) {
            return parser.getRecords();
        }
    }

    @Test
    void the_table_says_what_the_plan_buys() throws IOException {
        boolean soaks = answer.plan().orElseThrow().batches().stream()
                .flatMap(batch -> batch.dish().steps().stream())
                .anyMatch(Step::dayBefore);
        List<String> expected = new ArrayList<>();
        for (Purchase purchase : answer.plan().orElseThrow().shopping()) {
            for (Map.Entry<Pack, Integer> packs : purchase.packs().entrySet()) {
                Pack pack = packs.getKey();
                expected.add(String.join(
                        "|",
                        soaks ? "2026-11-24" : "2026-11-25",
                        "2026-11-25",
                        pack.shop(),
                        purchase.food().id(),
                        purchase.food().name(),
                        pack.label(),
                        packs.getValue() + "",
                        Currency.USD.text(pack.price()),
                        Currency.USD.text(pack.price().times(packs.getValue()))));
            }
        }
        List<String> found = read(ShoppingCsv.of(plan)).stream()
                .filter(r -> !r.get("packs").equals("0"))
                .map(r -> String.join(
                        "|",
                        List.of("shop_on", "cook_on", "shop", "food", "name", "pack", "packs", "price", "cost").stream()
                                .map(r::get)
                                .toList()))
                .toList();

        assertThat(found).isEqualTo(expected).isNotEmpty();
    }

    @Test
    void costs_and_grams_add_up() throws IOException {
        List<CSVRecord> rows = read(ShoppingCsv.of(plan));

        assertThat(rows.stream().map(r -> number(r, "cost")).reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo(
                        BigDecimal.valueOf(answer.plan().orElseThrow().cost().minor(), 2));
        assertThat(rows).allSatisfy(r -> {
            BigDecimal packs = r.get("packs").equals("0")
                    ? BigDecimal.ZERO
                    : number(r, "pack_g").multiply(number(r, "packs"));
            assertThat(packs.add(number(r, "from_pantry_g")))
                    .isEqualByComparingTo(number(r, "used_g").add(number(r, "left_g")));
        });
        assertThat(rows)
                .anyMatch(r -> r.get("packs").equals("0") && r.get("shop_on").isEmpty());
    }

    private static BigDecimal number(CSVRecord row, String column) {
        return new BigDecimal(row.get(column));
    }

    @Test
    void the_note_has_a_box_for_each_thing_and_the_total() {
        String note = ShoppingNote.of(plan);
        Money cost = answer.plan().orElseThrow().cost();
        long packs = answer.plan().orElseThrow().shopping().stream()
                .mapToLong(p -> p.packs().size())
                .sum();

        assertThat(note.lines()).allMatch(line -> line.length() <= 36);
        String flat = note.replaceAll("\\s+", " ");
        assertThat(flat)
                .contains("Total " + Currency.USD.text(cost) + " USD, "
                        + Currency.USD.text(new Money(9000 - cost.minor())) + " under the budget of 90.00")
                .contains("AT HOME", "[ ] salt");
        assertThat(flat.substring(0, flat.indexOf("AT HOME")).split("\\[ ] ", -1))
                .hasSize((int) packs + 1);
        answer.plan()
                .orElseThrow()
                .shopping()
                .forEach(purchase -> purchase.packs()
                        .forEach((pack, count) -> assertThat(flat)
                                .contains("[ ] " + purchase.food().name() + " " + PackText.bought(pack, count) + ", "
                                        + Currency.USD.text(pack.price().times(count)))));
    }
}
