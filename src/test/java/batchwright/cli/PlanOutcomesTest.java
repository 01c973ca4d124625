package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.app.MakePlan;
import batchwright.plan.Clash;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.plan.Purchase;
import batchwright.plan.Remedy;
import batchwright.quantity.Money;
import batchwright.solve.BatchPlanner;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every way in which planning can end: exit code, text and JSON. */
class PlanOutcomesTest {
    private static final String[] PLAN = {"plan", "parent-holding", "--days", "2"};
    private static final String[] PLAN_JSON = {"plan", "parent-holding", "--days", "2", "--json"};

    @TempDir
    Path here;

    /** A planner whose answer is made by a test. */
    private record Scripted(UnaryOperator<PlanResult> change) implements Planner {
        @Override
        public PlanResult plan(PlanRequest request) {
            return change.apply(new BatchPlanner().plan(request));
        }

        @Override
        public Possible possible(PlanRequest request) {
            return Possible.UNKNOWN;
        }
    }

    private Cli.Result run(UnaryOperator<PlanResult> change, String... args) {
        return Cli.in(here, new MakePlan(new Scripted(change))).run(args);
    }

    private static Plan planOf(PlanResult result) {
        return ((PlanResult.Planned) result).plan();
    }

    @Test
    void a_plan_that_fails_its_audit_is_never_shown() {
        // Takes one pack out of the basket: cheaper than possible, and something is not bought.
        UnaryOperator<PlanResult> lie = result -> {
            Plan plan = planOf(result);
            List<Purchase> shopping = new ArrayList<>(plan.shopping());
            shopping.replaceAll(p -> new Purchase(p.food(), Map.of(), p.usedGrams(), p.fromPantryGrams()));
            return new PlanResult.Planned(Plan.of(plan.first().withShopping(shopping)));
        };

        Cli.Result text = run(lie, PLAN);
        Cli.Result json = run(lie, PLAN_JSON);

        assertThat(text.code()).isEqualTo(1);
        assertThat(text.out()).isEmpty();
        assertThat(text.err()).contains("a fault of ours", "audit", "stock");
        assertThat(json.code()).isEqualTo(1);
        assertThat(Shape.parse(json.out()).get("schema").textValue()).isEqualTo("batchwright.error/1");
        assertThat(json.out()).doesNotContain("batches");
    }

    /** The second best is right, but the best has a pack too few. */
    @Test
    void a_plan_that_fails_its_audit_costs_nobody_the_next_best() {
        UnaryOperator<PlanResult> partly = result -> {
            Plan right = planOf(result);
            List<Purchase> shopping = new ArrayList<>(right.shopping());
            shopping.replaceAll(p -> new Purchase(p.food(), Map.of(), p.usedGrams(), p.fromPantryGrams()));
            var wrong = Plan.of(right.first().withShopping(shopping));
            var proof = new Proof(right.cost(), new Money(right.cost().minor() / 2), 7, Duration.ofMillis(1234));
            return new PlanResult.Planned(wrong, List.of(Plan.of(right.first().withProof(proof))));
        };

        Cli.Result text = run(partly, PLAN);
        JsonNode json = Shape.parse(run(partly, PLAN_JSON).out());

        assertThat(text.code()).isEqualTo(4);
        assertThat(text.out()).contains("not proven cheapest");
        assertThat(text.err()).contains("a fault of ours", "Please report this line: ", "stock: ");
        assertThat(json.get("status").textValue()).isEqualTo("not_proven");
        assertThat(json.get("batches")).isNotEmpty();
        assertThat(json.at("/audit/passed").booleanValue()).isTrue();
    }

    @Test
    void a_plan_with_a_wrong_amount_is_never_shown() {
        UnaryOperator<PlanResult> lie = result -> {
            Plan plan = planOf(result);
            List<Purchase> shopping = new ArrayList<>(plan.shopping());
            shopping.replaceAll(p ->
                    new Purchase(p.food(), p.packs(), p.usedGrams().subtract(BigDecimal.ONE), p.fromPantryGrams()));
            return new PlanResult.Planned(Plan.of(plan.first().withShopping(shopping)));
        };

        assertThat(run(lie, PLAN).code()).isEqualTo(1);
    }

    @Test
    void out_of_time_with_a_plan() {
        UnaryOperator<PlanResult> late = result -> {
            Plan plan = planOf(result);
            var proof = new Proof(plan.cost(), new Money(plan.cost().minor() / 2), 7, Duration.ofMillis(1234));
            return new PlanResult.GaveUp(Optional.of(Plan.of(plan.first().withProof(proof))), proof);
        };

        Cli.Result text = run(late, PLAN);
        JsonNode json = Shape.parse(run(late, PLAN_JSON).out());

        assertThat(text.code()).isEqualTo(4);
        assertThat(text.flat()).contains("not proven cheapest.", "100.0 %", "7 relaxations", "--seconds");
        assertThat(json.get("status").textValue()).isEqualTo("not_proven");
        assertThat(json.at("/proof/proven_cheapest").booleanValue()).isFalse();
        assertThat(json.at("/proof/seconds").asText()).isEqualTo("1.23");
        assertThat(json.get("batches")).isNotEmpty();
        assertThat(json.at("/audit/passed").booleanValue()).isTrue();
    }

    @Test
    void out_of_time_without_a_plan() {
        UnaryOperator<PlanResult> late = result -> new PlanResult.GaveUp(Optional.empty(), Proof.NONE);

        Cli.Result text = run(late, PLAN);
        JsonNode json = Shape.parse(run(late, PLAN_JSON).out());

        assertThat(text.code()).isEqualTo(4);
        assertThat(text.flat()).contains("no plan found in the time given", "no proof that there is none");
        assertThat(json.get("status").textValue()).isEqualTo("not_proven");
        assertThat(json.get("cost_minor").isNull()).isTrue();
        assertThat(json.get("batches")).isEmpty();
        assertThat(json.get("audit").isNull()).isTrue();
    }

    @Test
    void out_of_time_with_too_dear_a_plan_shows_it_as_such() {
        var cheapest = new AtomicReference<PlanResult>();
        run(
                result -> {
                    cheapest.set(result);
                    return result;
                },
                PLAN);
        Plan plan = planOf(Objects.requireNonNull(cheapest.get()));
        var proof = new Proof(plan.cost(), new Money(4), 7, Duration.ofMillis(1234));
        UnaryOperator<PlanResult> late =
                none -> PlanResult.GaveUp.overBudget(Plan.of(plan.first().withProof(proof)), proof);
        String[] within5Cents = Stream.concat(Arrays.stream(PLAN), Stream.of("--budget", "0.05"))
                .toArray(String[]::new);
        String[] asJson = Stream.concat(Arrays.stream(PLAN_JSON), Stream.of("--budget", "0.05"))
                .toArray(String[]::new);

        Cli.Result text = run(late, within5Cents);
        JsonNode json = Shape.parse(run(late, asJson).out());

        assertThat(text.err()).isEmpty();
        assertThat(text.code()).isEqualTo(4);
        assertThat(text.flat())
                .contains("more than the budget of 0.05, not proven cheapest", "over the budget of 0.05");
        assertThat(text.flat()).contains("no plan costs less than 0.04 USD");
        assertThat(json.get("status").textValue()).isEqualTo("not_proven");
        assertThat(json.get("cost_minor").longValue())
                .isGreaterThan(json.get("budget_minor").longValue());
        assertThat(json.at("/audit/passed").booleanValue()).isTrue();
    }

    @Test
    void close_enough_is_not_called_out_of_time() {
        UnaryOperator<PlanResult> close = result -> {
            Plan plan = planOf(result);
            var proof = new Proof(plan.cost(), new Money(plan.cost().minor() - 1), 7, Duration.ofMillis(1234));
            return new PlanResult.GaveUp(Optional.of(Plan.of(plan.first().withProof(proof))), proof);
        };
        String[] within2 =
                Stream.concat(Arrays.stream(PLAN), Stream.of("--within", "2%")).toArray(String[]::new);
        String[] asJson = Stream.concat(Arrays.stream(PLAN_JSON), Stream.of("--within", "2 %"))
                .toArray(String[]::new);

        Cli.Result text = run(close, within2);

        assertThat(text.code()).isEqualTo(4);
        assertThat(text.flat())
                .contains("As close to the cheapest as was asked for")
                .doesNotContain("Time ended");
        assertThat(Shape.parse(run(close, asJson).out())
                        .at("/proof/close_enough")
                        .booleanValue())
                .isTrue();
        assertThat(run(close, PLAN).flat()).contains("Time ended");
    }

    @Test
    void out_of_time_with_too_dear_a_plan_says_how_dear() {
        var proof = new Proof(new Money(8123), new Money(4567), 7, Duration.ofMillis(1234));
        UnaryOperator<PlanResult> late = result -> new PlanResult.GaveUp(Optional.empty(), proof);
        String[] within60 =
                Stream.concat(Arrays.stream(PLAN), Stream.of("--budget", "60")).toArray(String[]::new);

        assertThat(run(late, within60).flat())
                .contains("costs 81.23 USD, more than the budget of 60.00 USD", "no plan costs less than 45.67 USD");
    }

    @Test
    void no_plan_names_the_rules_that_clash() {
        var clash = new Clash("budget", "at most 10.00", "12.34 or more", Optional.of(new Remedy.PlanDays(2)));
        UnaryOperator<PlanResult> none = result -> new PlanResult.NoPlan(List.of(clash), Proof.NONE);

        Cli.Result text = run(none, PLAN);
        JsonNode json = Shape.parse(run(none, PLAN_JSON).out());

        assertThat(text.code()).isEqualTo(3);
        assertThat(text.out()).contains("Budget: at most 10.00.", "Cure: 12.34 or more.", "Try: --days 2");
        Shape.check(json, """
                {"status": "=no_plan", "clashes": [{"rule": "text", "says": "text", "cure": "text", "try": "text"}],
                 "proof": {"proven_cheapest": "=false", "cost_minor": "whole?", "lower_bound_minor": "whole?",
                           "nodes": "whole", "seconds": "number"}}
                """);
        assertThat(json.get("clashes")).hasSize(1);
    }

    @Test
    void a_budget_that_is_too_small_is_an_answer() {
        Cli.Result result = Cli.in(here).run("plan", "parent-holding", "--days", "2", "--budget", "5");

        assertThat(result.code()).isEqualTo(3);
        assertThat(result.err()).isEmpty();
        assertThat(result.out()).startsWith("2 days for Parent, holding: no plan keeps every rule within 5.00 USD.");
    }

    @Test
    void a_caution_stops_planning_and_needs_shows_it() throws IOException {
        Path profile = Folders.starter(here).resolve("profiles/lifter-gaining.yaml");
        Folders.replace(profile, "age: 27 ", "age: 16 ");

        Cli.Result plan = Cli.in(here).run("plan", "lifter-gaining");
        JsonNode planJson =
                Shape.parse(Cli.in(here).run("plan", "lifter-gaining", "--json").out());
        Cli.Result needs = Cli.in(here).run("needs", "lifter-gaining");
        JsonNode needsJson = Shape.parse(
                Cli.in(here).run("needs", "lifter-gaining", "--json").out());

        assertThat(plan.code()).isEqualTo(3);
        assertThat(plan.out())
                .startsWith("No plan for Lifter, gaining: a caution stops it.")
                .contains("doctor or dietitian");
        assertThat(planJson.get("status").textValue()).isEqualTo("no_plan");
        assertThat(planJson.get("clashes")).isEmpty();
        assertThat(planJson.at("/cautions/0/code").textValue()).isEqualTo("under_18");
        assertThat(planJson.at("/cautions/0/stops_planning").booleanValue()).isTrue();
        assertThat(needs.code()).isEqualTo(3);
        assertThat(needs.out().lines().limit(3).toList().toString())
                .contains("no figures")
                .contains("made for adults");
        assertThat(needsJson.get("targets").isNull()).isTrue();
        assertThat(needsJson.get("guides").isNull()).isTrue();
        assertThat(needsJson.get("reference_intakes")).isEmpty();
        assertThat(planJson.at("/eaters/0/nutrients")).isEmpty();
        assertThat(needsJson.at("/cautions/0/code").textValue()).isEqualTo("under_18");
    }

    @Test
    void what_nobody_expected_is_a_fault_of_ours_and_shows_no_insides() {
        UnaryOperator<PlanResult> broken = result -> {
            throw new IllegalStateException("boom");
        };

        Cli.Result short_ = run(broken, PLAN);
        Cli.Result debug = run(broken, "plan", "parent-holding", "--days", "2", "--debug");

        assertThat(short_.code()).isEqualTo(1);
        assertThat(short_.both()).contains("a fault of ours").doesNotContain("Exception", "boom", "at batchwright");
        assertThat(debug.code()).isEqualTo(1);
        assertThat(debug.err()).contains("boom", "at batchwright");
    }
}
