package batchwright.audit;

import static batchwright.audit.AuditCases.*;
import static batchwright.audit.LittlePlan.*;

import batchwright.plan.EaterDays;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.plan.Serving;
import batchwright.plan.Serving.Storage;
import batchwright.plan.Snack;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The little plan with other days, servings or snacks fails the checks it should, and no others. */
class AuditOfDaysTest {
    @ParameterizedTest(name = "{0}")
    @MethodSource("days")
    void fails_where_it_was_tampered_with(String what, PlanRequest request, Plan plan, Set<String> expected) {
        assertFails(request, plan, expected);
    }

    static List<Arguments> days() {
        Plan honest = honest();
        var bananas = new Snack(MEDIUM_BANANA, 2);
        return List.of(
                one(
                        "a day forgotten",
                        request(),
                        Tamper.days(honest, BEN, days -> days.subList(0, 3)),
                        "eaters and days",
                        "containers a day",
                        "shopping list",
                        "stock"),
                one(
                        "an eater forgotten",
                        request(),
                        Tamper.eaters(honest, eaters -> eaters.subList(0, 1)),
                        "eaters and days",
                        "containers a day",
                        "shopping list",
                        "stock"),
                one(
                        "a target other than was asked for",
                        request(),
                        Tamper.eaters(
                                honest,
                                eaters -> List.of(
                                        new EaterDays(
                                                new Seat(BEN, target(1550, 1400, 1700, 90, 20, 50, 20, 380)),
                                                eaters.get(0).days()),
                                        eaters.get(1))),
                        "eaters and days"),
                one(
                        "from the fridge after its fridge days",
                        request(),
                        Tamper.servings(honest, ANNA, 4, new Serving(CHICKEN_RICE, 1, Storage.FRIDGE)),
                        "keeping"),
                one(
                        "from the freezer although it keeps",
                        request(),
                        Tamper.servings(honest, ANNA, 3, new Serving(CHICKEN_RICE, 1, Storage.FREEZER)),
                        "keeping"),
                // Days 2 and 3 changed over: the egg pot keeps until day 2 only.
                one(
                        "a dish that does not freeze a day too late",
                        request(),
                        Tamper.servings(
                                Tamper.servings(honest, BEN, 2, new Serving(CHICKEN_RICE, 2, Storage.FRIDGE)),
                                BEN,
                                3,
                                new Serving(EGG_POT, 1, Storage.FRIDGE),
                                new Serving(CHICKEN_RICE, 1, Storage.FRIDGE)),
                        "keeping"),
                one(
                        "a container forgotten on one day",
                        request(),
                        Tamper.servings(honest, BEN, 3, new Serving(CHICKEN_RICE, 1, Storage.FRIDGE)),
                        "containers a day",
                        "energy band",
                        "protein floor",
                        "fat band",
                        "fibre floor"),
                one(
                        "three of a dish on a day",
                        wishes(BENS_SEAT, w -> wishes(w, 3)),
                        Tamper.servings(honest, BEN, 3, new Serving(CHICKEN_RICE, 3, Storage.FRIDGE)),
                        "containers a day",
                        "energy band"),
                one(
                        "a dish that is not cooked for the eater",
                        wishes(ANNAS_SEAT, w -> avoiding(w, Set.of(RICE), Set.of(), Set.of())),
                        Tamper.servings(honest, ANNA, 1, new Serving(EGG_POT, 1, Storage.FRIDGE)),
                        "day totals",
                        "average day",
                        "containers a day",
                        "energy band",
                        "protein floor",
                        "fat band",
                        "fibre floor",
                        "fruit and vegetables"),
                // Without the banana: 438 kcal, 46.5 g of protein, 9 g of fibre, 180 g of fruit and vegetables.
                one(
                        "a snack forgotten",
                        request(),
                        Tamper.snacks(honest, ANNA, 2),
                        "energy band",
                        "fibre floor",
                        "fruit and vegetables",
                        "shopping list",
                        "stock"),
                one(
                        "more of a measure than its most",
                        request(),
                        Tamper.snacks(honest, BEN, 1, new Snack(MEDIUM_BANANA, 3)),
                        "snack limits",
                        "energy band",
                        "protein floor",
                        "shopping list",
                        "stock"),
                one(
                        "more measures than the eater wants",
                        wishes(BENS_SEAT, w -> snacking(w, Optional.empty(), 2, 2)),
                        honest,
                        "snack limits"),
                one(
                        "more kinds than the eater wants",
                        wishes(BENS_SEAT, w -> snacking(w, Optional.empty(), 3, 1)),
                        honest,
                        "snack limits"),
                one(
                        "a snack the eater did not choose",
                        wishes(BENS_SEAT, w -> snacking(w, Optional.of(Set.of(BANANA)), 3, 2)),
                        honest,
                        "snack limits"),
                // A cup of milk is no snack: 1540 kcal, 92.4 g of protein, 39.3 g of fat, 19.1 g of fibre.
                one(
                        "a measure that is not offered as a snack",
                        request(),
                        Tamper.snacks(honest, BEN, 1, bananas, new Snack(CUP, 1)),
                        "snack limits",
                        "fibre floor",
                        "shopping list"),
                one(
                        "what is always eaten forgotten",
                        request(),
                        Tamper.always(honest, ANNA, 3),
                        "always eaten",
                        "energy band",
                        "protein floor",
                        "fat band",
                        "shopping list"),
                one(
                        "twice what is always eaten",
                        request(),
                        Tamper.always(honest, ANNA, 3, new Snack(CUP, 2)),
                        "always eaten",
                        "energy band",
                        "shopping list"));
    }
}
