package batchwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import batchwright.plan.ContainerWish;
import batchwright.plan.DishAnswer;
import batchwright.plan.DishPlanner;
import batchwright.plan.EnergyBand;
import batchwright.plan.Plan;
import batchwright.plan.Proof;
import batchwright.plan.Purchase;
import batchwright.quantity.Money;
import batchwright.report.dishes.FilledDishText;
import batchwright.report.print.Commands;
import batchwright.solve.dish.DishSolver;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An answer that does not stand up to the audit is never shown; one without a proof says so. */
class FillContainersTest {
    @TempDir
    Path here;

    private static final DishQuestion QUESTION = new DishQuestion(
            "lentil_ragu",
            3,
            ContainerWish.NONE.withEnergy(
                    Optional.of(EnergyBand.around(BigDecimal.valueOf(600), EnergyBand.USUAL_PERCENT))),
            List.of(),
            List.of(),
            true,
            Optional.empty());

    private String text(UnaryOperator<DishAnswer> change) {
        DishPlanner planner = request -> change.apply(new DishSolver().fill(request));
        var fill = new FillContainers(planner);
        return FilledDishText.of(
                        fill.answer(
                                Workspace.open(Optional.empty(), here, LocalDate.of(2026, 11, 25), note -> {}),
                                QUESTION),
                        new Commands(""))
                .replaceAll("\\s+", " ");
    }

    @Test
    void an_honest_answer_is_shown() {
        assertThat(text(answer -> answer))
                .startsWith("3 containers of ")
                .contains(", proven cheapest.", "12 checks passed");
    }

    @Test
    void a_pack_left_in_the_shop_is_a_fault() {
        UnaryOperator<DishAnswer> lie = answer -> {
            Plan plan = answer.plan().orElseThrow();
            List<Purchase> shopping = plan.shopping().stream()
                    .map(p -> new Purchase(p.food(), Map.of(), p.usedGrams(), p.fromPantryGrams()))
                    .toList();
            return DishAnswer.filled(Plan.of(plan.first().withShopping(shopping)));
        };

        assertThatThrownBy(() -> text(lie))
                .isInstanceOfSatisfying(
                        FailedAudit.class, fault -> assertThat(fault.failures()).contains("stock: ", "cost: "));
    }

    @Test
    void without_a_proof_that_is_said() {
        var proof = new Proof(new Money(0), new Money(123), 7, Duration.ZERO);

        assertThat(text(answer -> DishAnswer.notProven(
                        answer.plan()
                                .map(plan -> Plan.of(
                                        plan.first().withProof(new Proof(plan.cost(), Money.ZERO, 7, Duration.ZERO)))),
                        proof)))
                .contains("not proven cheapest.", "Time ended before the proof: nothing costs less than 0.00 USD");
        assertThat(text(answer -> DishAnswer.notProven(Optional.empty(), proof)))
                .contains("found in the time given, and no proof that there are none.");
    }
}
