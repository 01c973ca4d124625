package batchwright.audit;

import static batchwright.audit.AuditCases.*;
import static batchwright.audit.LittlePlan.*;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Kitchen;
import batchwright.food.Lot;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Purchase;
import batchwright.plan.UseUp;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Stock with use-by dates: what spoils before it is eaten is noticed, and what keeps is not. */
class AuditOfDatesTest {
    @ParameterizedTest(name = "{0}")
    @MethodSource("dates")
    void fails_where_it_was_tampered_with(String what, PlanRequest request, Plan plan, Set<String> expected) {
        assertFails(request, plan, expected);
    }

    static List<Arguments> dates() {
        Plan honest = honest();
        return List.of(
                one("past its date", with(pantry(PEANUTS, lot(150, 0))), honest, "stock", "shopping list"),
                one(
                        "a snack that spoils on day 3",
                        with(pantry(PEANUTS, lot(150, 3))),
                        honest,
                        "use by",
                        "shopping list"),
                one(
                        "a snack of which 30 g spoil too early",
                        with(pantry(PEANUTS, lot(60, 3), lot(90, 4))),
                        honest,
                        "use by",
                        "shopping list"),
                one(
                        "cooked from packs though the pantry spoils",
                        with(pantry(RICE, lot(300, 2))),
                        fromPantry(honest, RICE, 0),
                        "shopping list"),
                one(
                        "more left to use up than there is",
                        with(pantry(PEANUTS, lot(150, 4))),
                        fromPantry(honest, PEANUTS, 100),
                        "use by",
                        "shopping list"),
                one(
                        "a pack for what spoils, though enough keeps",
                        with(pantry(PEANUTS, lot(60, 3), lot(120, 4))),
                        Tamper.packs(honest, PEANUTS, packOf(PEANUTS), 1),
                        "stock",
                        "budget",
                        "cost"));
    }

    /** Four days: oats and rice are cooked on day 1, peanuts are a snack of every day. */
    @Test
    void a_date_does_not_matter_where_all_is_used_in_time() {
        assertThat(failed(audit(with(pantry(OATS, lot(100, 1))), honest()))).isEmpty();
        assertThat(failed(audit(with(pantry(RICE, lot(200, 3), lot(100, 2))), honest())))
                .isEmpty();
        assertThat(failed(audit(with(pantry(PEANUTS, lot(150, 4))), honest()))).isEmpty();
    }

    private static List<UseUp> useUp(Kitchen kitchen, Plan plan) {
        return UseUp.of(plan.first().withRequest(with(kitchen)));
    }

    /** 120 g of peanuts are eaten, 480 g of rice are cooked. */
    @Test
    void what_is_left_to_use_up() {
        Kitchen peanuts = pantry(PEANUTS, lot(90, 9), lot(90, 4), lot(60, 0), Lot.of(decimal(10)));
        Kitchen rice = pantry(RICE, lot(300, 3), lot(400, 2), lot(20, 4));
        Kitchen notUsed = pantry(BANANA, lot(1000, 2), lot(3000, 4), lot(500, 5));

        assertThat(useUp(peanuts, honest())).isEmpty();
        assertThat(useUp(
                        rice,
                        Tamper.line(honest(), RICE, p -> new Purchase(RICE, Map.of(), p.usedGrams(), p.usedGrams()))))
                .extracting(UseUp::toString)
                .isEqualTo(List.of(
                        new UseUp(RICE, decimal(220), COOKING_DAY.plusDays(2)).toString(),
                        new UseUp(RICE, decimal(20), COOKING_DAY.plusDays(3)).toString()));
        assertThat(useUp(notUsed, honest()))
                .extracting(UseUp::grams)
                .usingElementComparator(BigDecimal::compareTo)
                .containsExactly(decimal(1000), decimal(3000));
    }
}
