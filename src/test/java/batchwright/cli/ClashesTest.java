package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Starter eaters who ask for what cannot be: what the command line says, and that its advice, followed, leads to a plan. */
class ClashesTest {
    private static final int COLUMNS = 80;

    @TempDir
    Path here;

    private Path profile;

    @BeforeEach
    void starter() {
        profile = Folders.starter(here).resolve("profiles/lifter-gaining.yaml");
    }

    private Cli.Result plan(String... more) {
        String[] args = {"plan", "lifter-gaining", "--days", "3", "--seconds", "300"};
        String[] all = Arrays.copyOf(args, args.length + more.length);
        System.arraycopy(more, 0, all, args.length, more.length);
        return Cli.in(here).run(all);
    }

    private void target(String line) throws IOException {
        Files.writeString(profile, Files.readString(profile) + "\ntarget:\n  " + line + "\n");
    }

    private static void fits(Cli.Result result) {
        assertThat(result.out().lines()).allMatch(line -> line.length() <= COLUMNS);
    }

    /** 3.5 g per kg of 74 kg are 259 g. */
    @Test
    void protein_without_snacks() throws IOException {
        Folders.keepDishes(here, "beef_goulash", "peanut_stew", "split_pea_dal", "baked_oats");
        target("protein: 3.5 g per kg");
        Folders.replace(profile, "measures_a_day: 3", "measures_a_day: 0");

        Cli.Result text = plan();
        JsonNode json = Shape.parse(plan("--json").out());

        assertThat(text.code()).isEqualTo(3);
        assertThat(text.flat())
                .startsWith("3 days for Lifter, gaining: no plan keeps every rule. These rules cannot all hold")
                .contains("Protein floor: each day of Lifter, gaining holds at least 259 g of protein.")
                .contains("Snack limits: Lifter, gaining eats at most 0 measures of snacks a day");
        fits(text);
        assertThat(json.get("status").textValue()).isEqualTo("no_plan");
        assertThat(json.get("clashes")).allSatisfy(clash -> {
            assertThat(text.flat()).contains(clash.get("says").textValue());
            assertThat(text.flat()).contains(clash.get("cure").textValue());
        });
        assertThat(json.get("clashes"))
                .extracting(c -> c.get("rule").textValue())
                .contains("protein floor");
    }

    /** The figure that is offered leads to a plan; a hundredth more per kg, which is a gram more, does not. */
    @Test
    void the_edit_that_is_offered_leads_to_a_plan() throws IOException {
        Folders.keepDishes(here, "beef_goulash", "peanut_stew", "split_pea_dal", "baked_oats");
        target("protein: 3.5 g per kg");
        Folders.replace(profile, "measures_a_day: 3", "measures_a_day: 0");
        String edit = "";
        for (JsonNode clash : Shape.parse(plan("--json").out()).get("clashes")) {
            edit = clash.get("rule").textValue().equals("protein floor")
                    ? clash.get("try").textValue()
                    : edit;
        }
        String figure = edit.replaceAll("protein: ([0-9.]+) g per kg under target.*", "$1");

        Folders.replace(profile, "protein: 3.5 g", "protein: " + figure + " g");
        assertThat(plan().code()).isZero();

        BigDecimal more = new BigDecimal(figure).add(new BigDecimal("0.02"));
        Folders.replace(profile, "protein: " + figure + " g", "protein: " + more + " g");
        assertThat(plan().code()).isEqualTo(3);
    }

    @Test
    void a_cent_less_than_the_cheapest_plan_costs_is_not_enough() {
        long cost = Shape.parse(plan("--json").out()).get("cost_minor").longValue();
        String just = BigDecimal.valueOf(cost, 2).toPlainString();
        String less = BigDecimal.valueOf(cost - 1, 2).toPlainString();

        Cli.Result tight = plan("--budget", less);
        JsonNode clashes = Shape.parse(plan("--budget", less, "--json").out()).get("clashes");

        assertThat(tight.code()).isEqualTo(3);
        assertThat(tight.flat()).contains("Budget: the checkout cost stays within " + less, "--budget " + just);
        fits(tight);
        assertThat(clashes.get(0).get("try").textValue()).isEqualTo("--budget " + just);
        assertThat(clashes)
                .allSatisfy(
                        clash -> assertThat(clash.get("needed").booleanValue()).isTrue());
        assertThat(plan("--budget", just).code()).isZero();
    }

    @Test
    void too_few_dishes() {
        Cli.Result result = plan("--dishes", "1");

        assertThat(result.code()).isEqualTo(3);
        assertThat(result.out()).contains("Dish count: at most 1 dish is cooked", "Try: --dishes 2");
        fits(result);
        assertThat(plan("--dishes", "2").code()).isZero();
    }

    @Test
    void one_day() {
        Cli.Result result = Cli.in(here).run("plan", "lifter-gaining", "--days", "1");

        assertThat(result.code()).isEqualTo(3);
        assertThat(result.flat()).contains("This rule cannot hold", "a batch fills at least 2", "Try: --days 2");
        fits(result);
    }

    @Test
    void everything_avoided() throws IOException {
        Folders.replace(profile, "avoid: []", "avoid: [milk, wheat, egg, soy, fish, peanut, gluten, sulphite]");

        Cli.Result result = plan();

        assertThat(result.code()).isEqualTo(3);
        assertThat(result.flat())
                .contains("Avoid: ", "never reach Lifter, gaining, who may eat", "without its cheddar");
        assertThat(result.flat()).doesNotContain("milk again", "allergens again");
        fits(result);
    }

    /** A container of at most 45 % of the day and three snacks of some 200 kcal: the widest energy band does not do. */
    @Test
    void a_rule_that_no_change_of_its_own_cures() throws IOException {
        Folders.replace(profile, "containers_a_day: 3", "containers_a_day: 1");

        Cli.Result result = plan();

        assertThat(result.code()).isEqualTo(3);
        assertThat(result.flat())
                .contains("Energy band: each day of Lifter, gaining holds")
                .contains("This change makes a plan possible: - Containers a day: ask for 3 a day.")
                .contains("Try: containers_a_day: 3");
        fits(result);
    }
}
