package batchwright.audit;

import static batchwright.audit.AuditCases.assertFails;
import static batchwright.audit.AuditCases.with;
import static batchwright.audit.LittlePlan.BANANA;
import static batchwright.audit.LittlePlan.CARROT;
import static batchwright.audit.LittlePlan.CARROT_1000;
import static batchwright.audit.LittlePlan.CARROT_500;
import static batchwright.audit.LittlePlan.CHICKEN_RICE;
import static batchwright.audit.LittlePlan.decimal;
import static batchwright.audit.LittlePlan.honest;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Instead;
import batchwright.food.Kitchen;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.food.Shops;
import batchwright.food.Variant;
import batchwright.plan.Batch;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Proof;
import batchwright.plan.Purchase;
import batchwright.plan.Session;
import batchwright.quantity.Money;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The audit works out shops and swaps by itself: what a trip costs, by weight or in packs, and what a file allows to be swapped. */
class AuditOfShoppingTest {
    /** 20 cents for each 100 g. */
    private static final Pack LOOSE = new Pack(
                    CARROT, "corner shop", "loose", decimal(1000), new Money(200), CARROT_500.seen(), "invented")
            .looseBy(decimal(100));

    /** 675 g of carrots are bought otherwise than as 1000 g for 1.70. */
    private static Plan buying(Map<Pack, Integer> carrots, long minor) {
        List<Purchase> list = honest().shopping().stream()
                .map(p ->
                        p.food().equals(CARROT) ? new Purchase(CARROT, carrots, p.usedGrams(), p.fromPantryGrams()) : p)
                .toList();
        var cost = new Money(3120 - 170 + minor);
        return Plan.of(honest().first()
                .withRequest(soldLoose())
                .withShopping(list)
                .withProof(new Proof(cost, cost, 1, Duration.ZERO)));
    }

    private static PlanRequest soldLoose() {
        Kitchen kitchen = LittlePlan.kitchen();
        Map<Food, List<Pack>> packs = new LinkedHashMap<>(kitchen.packs());
        packs.put(CARROT, List.of(CARROT_500, CARROT_1000, LOOSE));
        return with(kitchen.withPacks(packs));
    }

    @Test
    void a_food_is_bought_by_weight_or_in_packs() {
        assertThat(Audit.of(soldLoose(), buying(Map.of(LOOSE, 7), 140)).passed())
                .isTrue();
        assertFails(soldLoose(), buying(Map.of(CARROT_500, 1, LOOSE, 2), 140), Set.of("one kind"));
    }

    /** All is bought in one shop: 1 trip. */
    @Test
    void a_trip_to_a_shop_is_paid() {
        PlanRequest request = with(LittlePlan.kitchen().with(new Shops(new Money(1), Map.of())));

        assertFails(request, honest(), Set.of("cost", "budget"));
    }

    /** Bananas in the place of carrots, in the recipe's amount. */
    private static Dish withBananas() {
        Part vegetables = CHICKEN_RICE.parts().get(2);
        Ingredient carrot = vegetables.mix().get(0);
        var instead = new Instead(List.of(new Ingredient(BANANA, carrot.amount(), Optional.empty())), false);
        Part marked = new Part(
                vegetables.name(),
                vegetables.optional(),
                vegetables.stepGrams(),
                vegetables.pieces(),
                vegetables.leastGrams(),
                vegetables.mostGrams(),
                List.of(
                        new Ingredient(CARROT, carrot.amount(), Optional.empty(), Optional.empty(), instead),
                        vegetables.mix().get(1)));
        Dish dish = new Dish(
                CHICKEN_RICE.id(),
                CHICKEN_RICE.name(),
                CHICKEN_RICE.kind(),
                CHICKEN_RICE.fridgeDays(),
                CHICKEN_RICE.freezes(),
                CHICKEN_RICE.reheat(),
                List.of(CHICKEN_RICE.parts().get(0), CHICKEN_RICE.parts().get(1), marked),
                List.of(),
                List.of());
        return Variant.of(dish).get(0).dish();
    }

    @Test
    void what_the_file_does_not_allow_is_not_swapped() {
        Plan plan = honest();
        List<Batch> batches = plan.batches().stream()
                .map(batch -> batch.dish().equals(CHICKEN_RICE) ? new Batch(withBananas(), batch.fills()) : batch)
                .toList();
        Plan swapped = Plan.of(new Session(
                1,
                plan.first().request(),
                plan.first().eaters(),
                batches,
                plan.shopping(),
                plan.first().proof()));

        assertThat(Audit.of(LittlePlan.request(), swapped).checks())
                .anyMatch(check -> check.rule().equals("names in the files") && !check.passed());
    }
}
