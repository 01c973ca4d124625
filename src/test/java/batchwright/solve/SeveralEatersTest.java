package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.Audit;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.quantity.Money;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Several starter eaters who share one pot: a plan and a bound with little work. */
class SeveralEatersTest {
    /** What a search does in about a second, at most. */
    private static final long LITTLE = 2_500_000_000L;

    private static PlanRequest request(String eaters) {
        return WideKitchens.request(24, 5, List.of(eaters.split(" ")));
    }

    private static Plan best(PlanResult result) {
        return result.plans().stream().min(Comparator.comparing(Plan::cost)).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "lifter-gaining desk-cutting",
        "lifter-gaining parent-holding",
        "desk-cutting parent-holding",
        "lifter-gaining desk-cutting parent-holding"
    })
    void there_is_soon_a_plan_and_a_bound(String eaters) {
        PlanRequest request = request(eaters);

        PlanResult result = BatchPlanner.untilWork(LITTLE).plan(request);

        assertThat(Audit.of(request, best(result)).failures()).isEmpty();
        assertThat(result.proof().lowerBound())
                .isBetween(new Money(1), best(result).cost());
    }

    @ParameterizedTest
    @CsvSource({"lifter-gaining desk-cutting, 80", "lifter-gaining parent-holding, 70"})
    void a_plan_over_the_budget_is_shown_while_a_cheaper_one_may_exist(String eaters, int budget) {
        PlanRequest request = request(eaters).withBudget(Optional.of(new Money(budget * 100L)));

        PlanResult result = BatchPlanner.untilWork(LITTLE).plan(request);

        assertThat(result).isInstanceOf(PlanResult.GaveUp.class);
        Plan shown = ((PlanResult.GaveUp) result).overBudget().orElseThrow();
        assertThat(shown.cost()).isGreaterThan(new Money(budget * 100L));
        assertThat(Audit.of(request.withBudget(Optional.empty()), shown).failures())
                .isEmpty();
        assertThat(result.plans()).isEmpty();
    }
}
