package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The starter kitchen with every price as many yen, or thousandths of a dinar, as it is cents: the same plan in other clothes. How
 * many decimals belong where is ISO 4217's: none for JPY, three for KWD.
 */
class CurrenciesTest {
    private static final Pattern PRICE = Pattern.compile("(?m)^([^#\n]*?,)(\\d+)\\.(\\d\\d),USD,");

    private static final CSVFormat TABLE =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    @TempDir
    Path here;

    @TempDir
    Path dollars;

    private Cli.Result run(String... args) {
        return Cli.in(here).run(args);
    }

    private void kitchenIn(String code) throws IOException {
        Folders.starter(here);
        Currency currency = Currency.of(code).orElseThrow();
        Path shop = here.resolve("foods/shop.csv");
        String prices = Files.readString(shop);
        Files.writeString(
                shop,
                PRICE.matcher(prices)
                        .replaceAll(m -> m.group(1) + currency.text(new Money(Long.parseLong(m.group(2) + m.group(3))))
                                + "," + code + ","));
        assertThat(Files.readString(shop)).doesNotContainPattern(",USD,");
    }

    private static String[] plan(String... more) {
        String[] args = {"plan", "parent-holding", "--days", "2", "--cook", "lentil_ragu,turkey_chili"};
        String[] all = Arrays.copyOf(args, args.length + more.length);
        System.arraycopy(more, 0, all, args.length, more.length);
        return all;
    }

    private static JsonNode withoutMoneyAndTime(String json) {
        ObjectNode plan = (ObjectNode) Shape.parse(json);
        plan.remove("currency");
        ((ObjectNode) plan.get("proof")).remove("seconds");
        return plan;
    }

    @ParameterizedTest
    @ValueSource(strings = {"JPY", "KWD"})
    void json_says_the_same_minor_units(String code) throws IOException {
        Folders.starter(dollars);
        kitchenIn(code);

        Cli.Result result = run(plan("--json"));

        assertThat(result.code()).isZero();
        assertThat(result.err()).isEmpty();
        assertThat(Shape.parse(result.out()).get("currency").textValue()).isEqualTo(code);
        assertThat(withoutMoneyAndTime(result.out()))
                .isEqualTo(
                        withoutMoneyAndTime(Cli.in(dollars).run(plan("--json")).out()));
    }

    /** The cost of the plan in JSON, 0 or 3 decimals in text, in the list for spreadsheets and in the note for a phone. */
    @ParameterizedTest
    @CsvSource({"JPY, 0, 9000", "KWD, 3, 9.125"})
    void text_and_files_have_its_decimals(String code, int digits, String budget) throws IOException {
        kitchenIn(code);
        long minor = Shape.parse(run(plan("--json")).out()).get("cost_minor").longValue();
        String cost = BigDecimal.valueOf(minor, digits).toPlainString();

        Cli.Result text = run(plan("--budget", budget, "--shopping", "list.csv", "--report", "plan.html"));
        Cli.Result note = run(plan("--shopping", "list.txt"));

        assertThat(text.code()).isZero();
        assertThat(text.flat())
                .contains(": " + cost + " " + code + " (budget " + budget + "), proven cheapest.")
                .contains("BUY: ", ", " + cost + " " + code + " ")
                .contains("Total " + cost + " " + code + ", ", " under the budget of " + budget + "; ");
        assertThat(note.code()).isZero();
        String list = Files.readString(here.resolve("list.csv"));
        BigDecimal sum = BigDecimal.ZERO;
        for (CSVRecord row : CSVParser.parse(list, TABLE)) {
            var price = new BigDecimal(row.get("cost"));
            sum = sum.add(price);
            assertThat(price.scale()).isEqualTo(digits);
            assertThat(row.get("currency")).isEqualTo(code);
        }
        assertThat(sum.toPlainString()).isEqualTo(cost);
        assertThat(Files.readString(here.resolve("list.txt"))).contains("Total " + cost + " " + code);
        assertThat(Files.readString(here.resolve("plan.html"))).contains(cost + " " + code);
        assertNothingIn("minor units|USD\\b", text.out(), list, Files.readString(here.resolve("plan.html")));
    }

    private static void assertNothingIn(String pattern, String... texts) {
        for (String text : texts) {
            assertThat(text).doesNotContainPattern(pattern);
        }
    }

    @ParameterizedTest
    @CsvSource({"JPY, 100 JPY more, '\\d+', 5", "KWD, 0.100 KWD more, '\\d+\\.\\d{3}', 0.005"})
    void why_and_frontier_and_clashes_have_its_decimals(String code, String step, String amount, String little)
            throws IOException {
        kitchenIn(code);

        Cli.Result why = run(plan("--why", "--seconds", "8"));
        Cli.Result frontier = run(plan("--frontier", "budget", "--seconds", "8"));
        Cli.Result poor = run(plan("--budget", little));

        assertThat(why.flat()).contains(step).containsPattern("Together " + amount + " " + code);
        assertThat(frontier.out())
                .containsPattern("(?s)FRONTIER: how much protein a day a budget buys.* " + amount + " ");
        assertThat(poor.code()).isEqualTo(ExitCode.NO_PLAN.code());
        assertThat(poor.flat())
                .contains("within " + little + " " + code)
                .containsPattern("raise the budget to " + amount + ", the cost of the cheapest plan");
        assertNothingIn("minor units|USD\\b", why.out(), frontier.out(), poor.out());
    }

    @ParameterizedTest
    @CsvSource({"JPY, '\\d+', 150", "KWD, '\\d+\\.\\d{3}', 0.15"})
    void snacks_dishes_and_foods_have_its_decimals(String code, String amount, String budget) throws IOException {
        kitchenIn(code);

        assertThat(run("snack", "430", "--budget", budget).flat())
                .containsPattern("g protein, " + amount + " " + code + "\\.");
        JsonNode snack =
                Shape.parse(run("snack", "430", "--budget", budget, "--json").out());
        assertThat(snack.get("currency").textValue()).isEqualTo(code);
        assertThat(snack.findValue("budget_minor").longValue()).isEqualTo(150);
        assertThat(run("dishes", "lentil_ragu", "--containers", "5", "--kcal", "700")
                        .flat())
                .containsPattern(": " + amount + " " + code + " to buy")
                .containsPattern("is worth " + amount + " " + code);
        assertThat(run("foods", "banana").out()).containsPattern(amount + " per 1000\\s+kcal, " + amount + " per 30 g");
        assertThat(run("foods", "--compare").flat()).containsPattern(", " + amount + " " + code + "\\. Each in");
        assertThat(run("dishes").out()).contains(code);
        assertThat(run("check").code()).isZero();
    }

    @Test
    void a_budget_with_more_decimals_than_the_currency_is_refused() throws IOException {
        kitchenIn("JPY");

        Cli.Result result = run(plan("--budget", "75.50"));

        assertThat(result.code()).isEqualTo(ExitCode.NOT_RIGHT.code());
        assertThat(result.err())
                .contains("the budget cannot be \"75.50\"", "All prices are in JPY, which has no decimals.");
        assertThat(run("snack", "430", "--budget", "1.5").err()).contains("which has no decimals");
        assertThat(run("dishes", "lentil_ragu", "--kcal", "700", "--budget", "1.5")
                        .err())
                .contains("which has no decimals");
    }
}
