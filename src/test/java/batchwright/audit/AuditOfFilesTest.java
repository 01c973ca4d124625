package batchwright.audit;

import static batchwright.audit.AuditCases.*;
import static batchwright.audit.LittlePlan.*;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Allergen;
import batchwright.food.Ingredient;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The files say one thing and the plan's own copy another: the files are believed. */
class AuditOfFilesTest {
    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void fails_where_it_was_tampered_with(String what, PlanRequest request, Plan plan, Set<String> expected) {
        assertFails(request, plan, expected);
    }

    /** The files say one thing and the plan's own copy another: the files are believed. */
    static List<Arguments> files() {
        Kitchen kitchen = kitchen();
        var bigBanana = new Measure(BANANA, "medium", new BigDecimal("120.1"), 2, "invented");
        return List.of(
                one(
                        "less at home",
                        with(pantry(kitchen, Map.of(OATS, LittlePlan.lots(100), RICE, LittlePlan.lots(300)))),
                        honest(),
                        "stock",
                        "shopping list"),
                one(
                        "another price in the shop",
                        with(packs(kitchen, priced(packOf(CHICKEN), 501))),
                        honest(),
                        "cost",
                        "budget"),
                one(
                        "a banana of another weight",
                        with(measures(kitchen, bigBanana)),
                        honest(),
                        "day totals",
                        "average day",
                        "shopping list",
                        "stock"),
                one(
                        "peanuts with another fat",
                        with(foods(kitchen, food("peanuts", 0, Set.of(Allergen.PEANUT), 600, 25, 51, 8, 0))),
                        honest(),
                        "day totals",
                        "average day"),
                one(
                        "chicken with another energy",
                        with(foods(kitchen, food("chicken", 0, Set.of(), 121, 24, 2, 0, 0))),
                        honest(),
                        "day totals",
                        "average day",
                        "container contents"),
                one(
                        "another mix of vegetables",
                        with(dish(
                                kitchen,
                                VEGETABLES,
                                new Part(
                                        "vegetables",
                                        false,
                                        5,
                                        false,
                                        90,
                                        180,
                                        List.of(
                                                new Ingredient(CARROT, decimal(51), Optional.empty()),
                                                new Ingredient(BEANS, decimal(99), Optional.empty()))))),
                        honest(),
                        "batch ingredients",
                        "container contents",
                        "day totals",
                        "average day",
                        "shopping list"),
                one(
                        "fat of the chicken that the files pour off and the plan does not",
                        with(dish(kitchen, MEAT, chickenWithout("0.5"))),
                        honest(),
                        "batch ingredients",
                        "container contents",
                        "day totals",
                        "average day"),
                one(
                        "fat of the chicken that the plan pours off and the files do not",
                        request(),
                        Tamper.part(honest(), MEAT, chickenWithout("0.5")),
                        "batch ingredients",
                        "container contents",
                        "day totals",
                        "average day"),
                one(
                        "more fat poured off than the files say",
                        with(dish(kitchen, MEAT, chickenWithout("0.4"))),
                        Tamper.part(honest(), MEAT, chickenWithout("0.5")),
                        "batch ingredients",
                        "container contents",
                        "day totals",
                        "average day"),
                one(
                        "so much fat poured off that Anna's day has too little",
                        with(dish(kitchen, MEAT, chickenWithout("1"))),
                        Tamper.part(honest(), MEAT, chickenWithout("1")),
                        "fat band"),
                one("another yield of rice", with(dish(kitchen, STARCH, boiledTo("2.5"))), honest(), "cooked weights"),
                one(
                        "a dish that is not in the files",
                        with(dishes(kitchen, Map.of(CHICKEN_RICE.id(), CHICKEN_RICE))),
                        honest(),
                        "names in the files",
                        "energy band",
                        "protein floor",
                        "fat band",
                        "container share",
                        "container protein",
                        "fibre floor",
                        "day totals",
                        "average day",
                        "container contents",
                        "batch ingredients",
                        "shopping list",
                        "stock"));
    }

    /**
     * On paper, 0.5 g of fat poured off 100 g of chicken: 150 g lose 0.75 g and 6.75 kcal, so Ben's day 1 holds 1563.25 kcal and
     * 46.05 g of fat; the batch loses 0.5 % of 6 x 150 + 4 x 120 g = 6.9 g.
     */
    @Test
    void fat_poured_off_is_worked_out_again() {
        Plan plan = Tamper.part(honest(), MEAT, chickenWithout("0.5"));
        PlanRequest request = with(dish(request().kitchen(), MEAT, chickenWithout("0.5")));

        assertThat(failed(audit(request, plan))).isEmpty();
        Eaten eaten = Evidence.of(request, plan.first()).eaten();
        Grams day = eaten.onDay(BEN, plan.eaters().get(0).days().get(0));
        assertThat(day.holds(Nutrient.ENERGY)).isEqualByComparingTo("1563.25");
        assertThat(day.holds(Nutrient.FAT)).isEqualByComparingTo("46.05");
        assertThat(day.holds(Nutrient.PROTEIN)).isEqualByComparingTo("92.4");
        assertThat(eaten.inBatch(plan.batches().get(0)).fatPouredOffByPart())
                .hasEntrySatisfying("meat", fat -> assertThat(fat).isEqualByComparingTo("6.9"));
    }
}
