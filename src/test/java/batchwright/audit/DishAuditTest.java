package batchwright.audit;

import static batchwright.audit.LittlePlan.BEN;
import static batchwright.audit.LittlePlan.CHICKEN;
import static batchwright.audit.LittlePlan.CHICKEN_RICE;
import static batchwright.audit.LittlePlan.decimal;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.plan.Batch;
import batchwright.plan.ContainerWish;
import batchwright.plan.DishRequest;
import batchwright.plan.EnergyBand;
import batchwright.plan.Fill;
import batchwright.plan.Plan;
import batchwright.plan.Portion;
import batchwright.plan.Proof;
import batchwright.plan.Purchase;
import batchwright.plan.Session;
import batchwright.quantity.Money;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Containers of one dish that are right pass; one slip in each thing that is printed does not. Two containers of chicken 150 g,
 * rice 80 g, carrot 50 g and beans 100 g hold 580 kcal, 50.1 g protein and 4.8 g fat each (see {@link LittlePlan}); they cost
 * 5.00 chicken + 0.90 beans x 1 (200 g) + 1.00 carrot (125 g as bought); 160 of 300 g rice come from the pantry.
 */
class DishAuditTest {
    private static final Portion MEAT = new Portion(LittlePlan.MEAT, 150);
    private static final Portion RICE = new Portion(LittlePlan.STARCH, 80);
    private static final Portion VEGETABLES = new Portion(LittlePlan.VEGETABLES, 150);

    private static DishRequest asked() {
        return new DishRequest(
                LittlePlan.kitchen(),
                CHICKEN_RICE,
                2,
                new ContainerWish(
                        Optional.of(EnergyBand.around(decimal(590), decimal(3))),
                        Optional.of(decimal(50)),
                        Optional.of(decimal(5)),
                        Set.of("rice"),
                        Set.of()),
                true,
                Optional.of(new Money(690)),
                Duration.ofSeconds(1));
    }

    private static Plan honest() {
        return plan(new Fill(Optional.empty(), 2, List.of(MEAT, RICE, VEGETABLES)));
    }

    private static Plan plan(Fill fill) {
        return Plan.of(new Session(
                1,
                asked().forNobody(),
                List.of(),
                List.of(new Batch(CHICKEN_RICE, List.of(fill))),
                List.of(
                        line(CHICKEN, 300, 0, 1),
                        line(LittlePlan.RICE, 160, 160, 0),
                        new Purchase(LittlePlan.CARROT, Map.of(LittlePlan.CARROT_500, 1), decimal(125), decimal(0)),
                        line(LittlePlan.BEANS, 200, 0, 1)),
                new Proof(new Money(690), new Money(690), 1, Duration.ZERO)));
    }

    private static Purchase line(batchwright.food.Food food, int used, int fromPantry, int packs) {
        return new Purchase(
                food,
                packs == 0 ? Map.of() : Map.of(LittlePlan.packOf(food), packs),
                decimal(used),
                decimal(fromPantry));
    }

    private static List<String> failed(DishRequest request, Plan plan) {
        return DishAudit.of(request, plan).checks().stream()
                .filter(c -> !c.passed())
                .map(AuditReport.Check::rule)
                .toList();
    }

    private static List<String> failed(Fill fill) {
        return failed(asked(), plan(fill));
    }

    @Test
    void what_is_right_passes() {
        assertThat(failed(asked(), honest())).isEmpty();
    }

    @Test
    void grams_that_miss_the_wish() {
        var less = new Fill(Optional.empty(), 2, List.of(new Portion(LittlePlan.MEAT, 145), RICE, VEGETABLES));
        var more = new Fill(Optional.empty(), 2, List.of(new Portion(LittlePlan.MEAT, 200), RICE, VEGETABLES));

        assertThat(failed(less))
                .contains("container asked for", "shopping list")
                .doesNotContain("part range");
        assertThat(failed(more)).contains("container asked for");
    }

    @Test
    void each_limit_by_itself() {
        ContainerWish none = ContainerWish.NONE;

        assertThat(failed(with(none.withEnergy(Optional.of(EnergyBand.between(decimal(581), decimal(600))))), honest()))
                .containsExactly("container asked for");
        assertThat(failed(with(none.withEnergy(Optional.of(EnergyBand.between(decimal(500), decimal(579))))), honest()))
                .containsExactly("container asked for");
        assertThat(failed(with(none.withProtein(Optional.of(decimal(51)))), honest()))
                .containsExactly("container asked for");
        assertThat(failed(with(none.withFat(Optional.of(decimal(4)))), honest()))
                .containsExactly("container asked for");
        assertThat(failed(with(none.withEnergy(Optional.of(EnergyBand.between(decimal(580), decimal(580))))), honest()))
                .isEmpty();
    }

    private static DishRequest with(ContainerWish wish) {
        return asked().withWish(wish);
    }

    @Test
    void another_number_of_containers() {
        assertThat(failed(new Fill(Optional.empty(), 3, List.of(MEAT, RICE, VEGETABLES))))
                .contains("containers asked for", "shopping list");
    }

    @Test
    void containers_for_somebody() {
        assertThat(failed(new Fill(BEN, 2, List.of(MEAT, RICE, VEGETABLES)))).containsExactly("containers asked for");
    }

    @Test
    void parts_that_were_forced() {
        var out = new Fill(Optional.empty(), 2, List.of(MEAT, new Portion(LittlePlan.STARCH, 0), VEGETABLES));

        assertThat(failed(out)).contains("containers asked for");
        assertThat(failed(asked().withParts(Set.of(), Set.of("rice")), honest()))
                .containsExactly("containers asked for");
    }

    @Test
    void grams_between_the_marks_of_the_scale() {
        assertThat(failed(new Fill(Optional.empty(), 2, List.of(new Portion(LittlePlan.MEAT, 151), RICE, VEGETABLES))))
                .contains("part range");
    }

    @Test
    void a_pack_less_and_a_pack_more() {
        assertThat(failed(asked(), Tamper.line(honest(), CHICKEN, p -> line(CHICKEN, 300, 0, 0))))
                .contains("stock", "cost");
        assertThat(failed(asked(), Tamper.line(honest(), CHICKEN, p -> line(CHICKEN, 300, 0, 2))))
                .contains("stock", "cost", "budget");
    }

    @Test
    void a_pantry_that_was_to_be_left_alone() {
        DishRequest alone = new DishRequest(
                LittlePlan.kitchen(),
                CHICKEN_RICE,
                2,
                asked().wish().withParts(Set.of(), Set.of()),
                false,
                Optional.empty(),
                Duration.ofSeconds(1));

        assertThat(failed(alone, honest())).contains("stock", "shopping list");
    }

    @Test
    void a_dish_that_was_not_asked_for() {
        var pot = new Fill(
                Optional.empty(), 2, List.of(new Portion(LittlePlan.EGGS, 150), new Portion(LittlePlan.PORRIDGE, 300)));
        Plan other = Tamper.batches(honest(), all -> List.of(new Batch(LittlePlan.EGG_POT, List.of(pot))));

        assertThat(failed(asked(), other)).contains("containers asked for");
    }
}
