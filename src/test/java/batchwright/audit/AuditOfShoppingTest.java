package batchwright.audit;

import static batchwright.audit.AuditCases.*;
import static batchwright.audit.LittlePlan.*;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Pack;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Proof;
import batchwright.plan.Purchase;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The little plan with another shopping list, cost or proof fails the checks it should, and no others. */
class AuditOfShoppingTest {
    @ParameterizedTest(name = "{0}")
    @MethodSource({"shoppingAndCost", "looseAndMultipacks"})
    void fails_where_it_was_tampered_with(String what, PlanRequest request, Plan plan, Set<String> expected) {
        assertFails(request, plan, expected);
    }

    static List<Arguments> shoppingAndCost() {
        Plan honest = honest();
        return List.of(
                one("a pack too few", request(), Tamper.packs(honest, CHICKEN, packOf(CHICKEN), 2), "stock", "cost"),
                one(
                        "a pack too many",
                        request().withBudget(Optional.empty()),
                        Tamper.packs(honest, BEANS, packOf(BEANS), 4),
                        "stock",
                        "cost"),
                one(
                        "a pack of what the pantry covers",
                        request().withBudget(Optional.empty()),
                        Tamper.packs(honest, PEANUTS, packOf(PEANUTS), 1),
                        "stock",
                        "cost"),
                one(
                        "a second size that is not needed",
                        request().withBudget(Optional.empty()),
                        Tamper.packs(honest, CARROT, CARROT_500, 1),
                        "stock",
                        "cost"),
                one("less than no packs", request(), Tamper.packs(honest, CARROT, CARROT_500, -1), "stock", "cost"),
                one("used grams wrong", request(), Tamper.used(honest, CHICKEN, "1375"), "shopping list"),
                one("refuse forgotten", request(), Tamper.used(honest, CARROT, "540"), "shopping list"),
                one("two millionths of a gram", request(), Tamper.used(honest, CARROT, "675.000002"), "shopping list"),
                one(
                        "the pantry not used first",
                        request(),
                        Tamper.line(
                                honest,
                                RICE,
                                p -> new Purchase(RICE, p.packs(), p.usedGrams(), BigDecimal.valueOf(200))),
                        "shopping list"),
                one(
                        "a food forgotten that must be bought",
                        request(),
                        Tamper.shopping(
                                honest,
                                lines -> lines.stream()
                                        .filter(l -> !l.food().equals(OATS))
                                        .toList()),
                        "shopping list",
                        "stock",
                        "cost"),
                one(
                        "a food forgotten that is at home",
                        request(),
                        Tamper.shopping(honest, lines -> lines.subList(0, 8)),
                        "shopping list"),
                one(
                        "a cheaper price than the shop's",
                        request(),
                        Tamper.line(honest, BEANS, p -> priced(p, 89)),
                        "cost"),
                one(
                        "a pack that no shop sells",
                        request(),
                        Tamper.line(honest, BEANS, p -> sized(p, 500)),
                        "names in the files"),
                one(
                        "a proof of another cost",
                        request(),
                        Plan.of(honest.first()
                                .withProof(new Proof(new Money(3119), new Money(3119), 1, Duration.ZERO))),
                        "cost"),
                one(
                        "a lower bound above the cost",
                        request(),
                        Plan.of(honest.first()
                                .withProof(new Proof(new Money(3120), new Money(3121), 1, Duration.ZERO))),
                        "cost"));
    }

    /** 1080 g of beans for 2.70 in the honest plan. */
    @Test
    void loose_goods_and_multipacks_pass() {
        Pack loose = priced(packOf(BEANS), 100).looseBy(decimal(40)); // 0.25 for 100 g: 27 steps of 0.10
        Pack cans = cans(3, 600, 360, 270);

        assertThat(failed(audit(with(packs(kitchen(), loose)), beans(loose, 27))))
                .isEmpty();
        assertThat(failed(audit(with(packs(kitchen(), cans)), beans(cans, 1)))).isEmpty();
    }

    static List<Arguments> looseAndMultipacks() {
        Pack loose = priced(packOf(BEANS), 100).looseBy(decimal(40));
        Pack cheaper = new Pack(
                loose.food(),
                loose.shop(),
                loose.label(),
                loose.contents(),
                new Money(9),
                loose.loose(),
                loose.seen(),
                loose.note());
        return List.of(
                one("a step too many", with(packs(kitchen(), loose)), beans(loose, 28), "stock", "budget", "cost"),
                one("a step told cheaper", with(packs(kitchen(), loose)), beans(cheaper, 27), "cost"),
                one("a step filed cheaper", with(packs(kitchen(), cheaper)), beans(cheaper, 27), "cost"),
                one(
                        "cans counted with their liquid",
                        with(packs(kitchen(), cans(3, 600, 300, 270))),
                        beans(cans(3, 600, 600, 270), 1),
                        "names in the files"));
    }
}
