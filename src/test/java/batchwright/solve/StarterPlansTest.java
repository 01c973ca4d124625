package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.Audit;
import batchwright.audit.AuditReport;
import batchwright.files.KitchenReader;
import batchwright.files.disk.StarterFiles;
import batchwright.files.profile.EaterReader;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.needs.NeedsCalculator;
import batchwright.person.Eater;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plans from the starter files: audited, and cheaper or dearer as they must be when one thing changes. */
class StarterPlansTest {
    private static final int DAYS = 3;

    private static PlanRequest request(String eater) {
        var files = new StarterFiles();
        Kitchen kitchen =
                KitchenReader.read(files, LocalDate.of(2026, 11, 25)).value().orElseThrow();
        Eater who = EaterReader.read(files, "profiles/" + eater + ".yaml", Optional.of(kitchen))
                .value()
                .orElseThrow();
        var target = NeedsCalculator.needsOf(who).target().orElseThrow();
        return new PlanRequest(
                kitchen,
                List.of(new Seat(who, target)),
                DAYS,
                Optional.empty(),
                PlanRequest.USUAL_MOST_DISHES,
                Duration.ofSeconds(30));
    }

    @ParameterizedTest
    @ValueSource(strings = {"lifter-gaining", "desk-cutting", "parent-holding"})
    void each_starter_eater_has_a_plan_that_passes_every_check(String eater) {
        PlanRequest request = request(eater);

        Plan plan = plan(request);

        assertThat(Audit.of(request, plan).checks()).allMatch(AuditReport.Check::passed);
    }

    @Test
    void the_order_of_the_files_does_not_change_the_cost() {
        PlanRequest request = request("lifter-gaining");

        assertThat(cost(Variants.shuffled(request, 1))).isEqualTo(cost(request));
    }

    @Test
    void ten_times_the_prices_cost_ten_times_as_much() {
        PlanRequest request = request("lifter-gaining");

        assertThat(cost(Variants.pricesTimes(request, 10))).isEqualTo(cost(request) * 10);
    }

    @Test
    void a_budget_of_just_the_cost_is_enough() {
        PlanRequest request = request("lifter-gaining");
        long cost = cost(request);

        assertThat(cost(Variants.withBudget(request, cost))).isEqualTo(cost);
    }

    /** 200 g more at home of the first food on the shopping list. */
    @Test
    void more_at_home_never_costs_more() {
        PlanRequest request = request("lifter-gaining");
        Plan plan = plan(request);
        Food food = plan.shopping().get(0).food();

        assertThat(cost(Variants.pantry(request, food, 200)))
                .isLessThanOrEqualTo(plan.cost().minor());
    }

    private static long cost(PlanRequest request) {
        return plan(request).cost().minor();
    }

    private static Plan plan(PlanRequest request) {
        var result = new BatchPlanner().plan(request);
        assertThat(Outcome.of(result)).startsWith("costs");
        return result.best().orElseThrow();
    }
}
