package batchwright.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.plan.Purchase;
import batchwright.quantity.Money;
import batchwright.solve.BatchPlanner;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** What is believed of a planner's answers, and what is not. */
class CostOracleTest {
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

    private static CostOracle.Answer ask(UnaryOperator<PlanResult> change) {
        return new CostOracle(new Scripted(change), System::nanoTime, Duration.ofSeconds(10))
                .ask(LittleKitchen.request(LittleKitchen.EASY), 1);
    }

    /** One pack of everything more than is needed. */
    private static Plan wasteful(PlanResult result) {
        Plan plan = ((PlanResult.Planned) result).plan();
        List<Purchase> shopping = plan.shopping().stream()
                .map(p -> {
                    var packs = new LinkedHashMap<>(p.packs());
                    packs.replaceAll((pack, count) -> count + 1);
                    return new Purchase(p.food(), packs, p.usedGrams(), p.fromPantryGrams());
                })
                .toList();
        return Plan.of(plan.first().withShopping(shopping));
    }

    @Test
    void a_proven_plan_is_believed() {
        CostOracle.Answer answer = ask(result -> result);

        assertThat(answer.cost()).isEqualTo(KnownCost.exactly(new Money(200)));
        assertThat(answer.plan()).isPresent();
    }

    @Test
    void a_proven_plan_that_fails_its_audit_is_a_fault() {
        assertThatThrownBy(() -> ask(result -> new PlanResult.Planned(wasteful(result))))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("stock");
    }

    @Test
    void of_a_search_cut_off_only_a_plan_that_passes_its_audit_is_believed() {
        var proof = new Proof(new Money(300), new Money(150), 1, Duration.ZERO);

        CostOracle.Answer answer = ask(result -> new PlanResult.GaveUp(Optional.of(wasteful(result)), proof));

        assertThat(answer.plan()).isEmpty();
        assertThat(answer.cost()).isEqualTo(new KnownCost(new Money(150), Optional.empty(), false));
    }
}
