package batchwright.audit;

import static batchwright.audit.AuditCases.*;
import static batchwright.audit.LittlePlan.*;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Nutrients;
import batchwright.person.Eater;
import batchwright.person.Meals;
import batchwright.person.Wishes;
import batchwright.plan.Batch;
import batchwright.plan.EaterDays;
import batchwright.plan.Fill;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Portion;
import batchwright.plan.Proof;
import batchwright.plan.Purchase;
import batchwright.plan.Serving;
import batchwright.plan.Serving.Storage;
import batchwright.plan.left.LeftContainers;
import batchwright.plan.left.LeftDish;
import batchwright.quantity.Money;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** The little plan with Ben's two egg pots left from before: what is said of containers from before is looked at. */
class AuditOfContainersLeftTest {
    private static final Nutrients POT = honest().first().fill(EGG_POT, BEN).perContainer();
    private static final int POT_G = 450;
    private static final Dish LEFT = LeftDish.dish("pot (left)", EGG_POT, Set.of(), POT_G, POT, 2);
    private static final Food LEFT_FOOD = LEFT.parts().get(0).mix().get(0).food();
    private static final LeftDish BENS = left(EGG_POT, Set.of(), 2, Map.of());

    private static LeftDish left(Dish origin, Set<String> others, int containers, Map<Integer, Integer> byDay) {
        return new LeftDish(LEFT, origin.id(), BEN.id(), others, containers, byDay);
    }

    /** Day 1 and day 2 have a pot from before; without new ones nobody needs oats and eggs, and 1 l of milk is enough. */
    private static Plan plan() {
        var pot = new Serving(LEFT, 1, Storage.FRIDGE);
        var one = new Serving(CHICKEN_RICE, 1, Storage.FRIDGE);
        Plan served = Tamper.servings(Tamper.servings(honest(), BEN, 1, pot, one), BEN, 2, pot, one);
        Plan filled = Tamper.batches(
                served,
                all -> List.of(
                        all.get(0),
                        new Batch(
                                LEFT,
                                List.of(new Fill(
                                        BEN, 2, List.of(new Portion(LEFT.parts().get(0), POT_G)))))));
        Plan bought = Tamper.shopping(filled, all -> {
            List<Purchase> kept = new ArrayList<>(all.stream()
                    .filter(line -> !Set.of(OATS, EGG, MILK).contains(line.food()))
                    .toList());
            kept.add(new Purchase(MILK, Map.of(packOf(MILK), 1), decimal(1000), decimal(0)));
            kept.add(new Purchase(LEFT_FOOD, Map.of(), decimal(2 * POT_G), decimal(2 * POT_G)));
            return kept;
        });
        var cost = new Money(2620);
        return Plan.of(bought.first().withProof(new Proof(cost, cost, 1, Duration.ZERO)));
    }

    private static PlanRequest with(LeftDish... left) {
        return with(request(), left);
    }

    private static PlanRequest with(PlanRequest request, LeftDish... left) {
        return request.withLeft(new LeftContainers(List.of(left)));
    }

    private static PlanRequest ben(UnaryOperator<Wishes> change) {
        return wishes(BENS_SEAT, change);
    }

    private static void assertFailsAt(PlanRequest request, String check) {
        assertThat(failed(audit(request, seatedAs(request)))).contains(check);
    }

    /** The plan as it would be for eaters of these wishes. */
    private static Plan seatedAs(PlanRequest request) {
        Eater ben = request.seats().get(0).eater();
        return Tamper.eaters(
                plan(),
                all -> all.stream()
                        .map(mine -> mine.seat().eater().id().equals(ben.id())
                                ? new EaterDays(request.seats().get(0), mine.days())
                                : mine)
                        .toList());
    }

    @Test
    void passes_as_it_is() {
        assertThat(failed(audit(with(BENS), plan()))).isEmpty();
        assertThat(failed(audit(with(left(EGG_POT, Set.of(BEN.id()), 2, Map.of())), plan())))
                .isEmpty();
        assertThat(failed(audit(with(left(EGG_POT, Set.of(BEN.id()), 3, Map.of())), plan())))
                .isEmpty();
    }

    @Test
    void all_that_are_left_of_an_eater_are_eaten_on_their_days() {
        assertFailsAt(with(left(EGG_POT, Set.of(), 3, Map.of())), "containers a day");
        assertFailsAt(with(left(EGG_POT, Set.of(), 2, Map.of(1, 2))), "containers a day");
        assertThat(failed(audit(with(left(EGG_POT, Set.of(), 2, Map.of(1, 1, 2, 1))), plan())))
                .isEmpty();
    }

    @Test
    void no_more_are_eaten_than_are_offered_and_by_those_they_are_offered_to() {
        assertFailsAt(with(left(EGG_POT, Set.of(BEN.id()), 1, Map.of())), "containers a day");
        assertFailsAt(with(left(EGG_POT, Set.of(ANNA.id()), 2, Map.of())), "containers a day");
    }

    @Test
    void containers_from_before_and_new_ones_are_one_dish() {
        LeftDish chicken = left(CHICKEN_RICE, Set.of(), 2, Map.of());
        Meals usual = BEN.wishes().meals();

        PlanRequest onceADay = ben(w -> w.with(usual.withSameDish(1, OptionalInt.empty())));
        assertThat(detail(audit(with(onceADay, chicken), seatedAs(onceADay)), "containers a day"))
                .contains("day 1");
        PlanRequest sevenInAll = ben(w -> w.with(usual.withSameDish(2, OptionalInt.of(7))));
        assertThat(failed(audit(with(sevenInAll, BENS), seatedAs(sevenInAll)))).doesNotContain("meals");
        assertFailsAt(with(sevenInAll, chicken), "meals");
    }

    @Test
    void what_is_left_makes_no_room_for_more_dishes() {
        LeftDish other = new LeftDish(
                LeftDish.dish("pot (left 2)", EGG_POT, Set.of(), POT_G, POT, 2),
                EGG_POT.id(),
                BEN.id(),
                Set.of(BEN.id()),
                1,
                Map.of());
        PlanRequest one = with(dishes(1), BENS, other);

        assertThat(failed(audit(one, plan()))).isEmpty();
        assertFailsAt(one.withMostDishes(2), "dish count");
    }

    @Test
    void nobody_has_what_they_avoid() {
        PlanRequest noEgg = ben(w -> w.withAvoided(Set.of(), Set.of(Allergen.EGG), Set.of()));
        PlanRequest noPot = ben(w -> w.withAvoided(Set.of(), Set.of(), Set.of(EGG_POT)));
        PlanRequest noOats = ben(w -> w.withAvoided(Set.of(OATS), Set.of(), Set.of()));
        LeftDish annas = new LeftDish(LEFT, EGG_POT.id(), ANNA.id(), Set.of(BEN.id()), 2, Map.of());

        assertFailsAt(with(noEgg, BENS), "avoid");
        assertFailsAt(with(noPot, annas), "avoid");
        assertFailsAt(with(noOats, annas), "avoid");
        assertThat(failed(audit(with(annas), plan()))).isEmpty();
    }
}
