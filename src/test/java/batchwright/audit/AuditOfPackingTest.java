package batchwright.audit;

import static batchwright.audit.AuditCases.*;
import static batchwright.audit.LittlePlan.*;

import batchwright.plan.Batch;
import batchwright.plan.Fill;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Portion;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The little plan with other grams, parts or containers fails the checks it should, and no others. */
class AuditOfPackingTest {
    @ParameterizedTest(name = "{0}")
    @MethodSource("packing")
    void fails_where_it_was_tampered_with(String what, PlanRequest request, Plan plan, Set<String> expected) {
        assertFails(request, plan, expected);
    }

    static List<Arguments> packing() {
        Plan honest = honest();
        return List.of(
                // 5 g of rice more: 17.5 kcal a container, 30 g in the batch; all rules still hold.
                one(
                        "5 g more in each container than was bought for",
                        request(),
                        Tamper.grams(honest, CHICKEN_RICE, BEN, STARCH, 85),
                        "shopping list"),
                // 580 + 3 x 3.5 = 590.5; days 1570 + 10.5 and 1556 + 21 keep the band.
                one(
                        "no multiple of the scale's step",
                        request(),
                        Tamper.grams(honest, CHICKEN_RICE, BEN, STARCH, 83),
                        "part range",
                        "shopping list"),
                // 25 g of egg less in a container: 3 g of protein less, 29.4 g in it and 89.4 g on days 1 and 2.
                one(
                        "two and a half eggs",
                        request(),
                        Tamper.grams(honest, EGG_POT, BEN, EGGS, 125),
                        "part range",
                        "cooked weights",
                        "protein floor",
                        "container protein",
                        "shopping list"),
                // 205 g of meat instead of 150: +66 kcal; containers 646, days 1636 and 1688 leave the band; 1710 g of
                // meat still fit into three packs.
                one(
                        "more meat than the range",
                        request(),
                        Tamper.grams(honest, CHICKEN_RICE, BEN, MEAT, 205),
                        "part range",
                        "energy band",
                        "shopping list"),
                // 35 g of rice instead of 80: -157.5 kcal and -3.15 g of protein leave share, band and floor; 210 g
                // come from the
                // pantry alone, so that the pack is needless.
                one(
                        "less of an optional part than its least",
                        request(),
                        Tamper.grams(honest, CHICKEN_RICE, BEN, STARCH, 35),
                        "part range",
                        "energy band",
                        "protein floor",
                        "container share",
                        "shopping list",
                        "stock"),
                // Anna: 120 g less, 120 kcal + 24 less.
                one(
                        "a part left out that is not optional",
                        request(),
                        Tamper.grams(honest, CHICKEN_RICE, ANNA, VEGETABLES, 0),
                        "part range",
                        "energy band",
                        "protein floor",
                        "fibre floor",
                        "fat band",
                        "fruit and vegetables",
                        "container share",
                        "container protein",
                        "shopping list",
                        "stock"),
                // 40 g of rice: 140 kcal more than Anna may have; 160 g more, 640 of 1300 g.
                one(
                        "a disliked part that was to be left out",
                        request(),
                        Tamper.grams(honest, CHICKEN_RICE, ANNA, STARCH, 40),
                        "avoid",
                        "energy band",
                        "container share",
                        "shopping list"),
                one(
                        "a part missing",
                        request(),
                        Tamper.fill(
                                honest,
                                EGG_POT,
                                BEN,
                                f -> new Fill(BEN, 2, f.portions().subList(0, 1))),
                        "part range",
                        "energy band",
                        "protein floor",
                        "fibre floor",
                        "container share",
                        "container protein",
                        "shopping list",
                        "stock"),
                one(
                        "one container too many in the batch",
                        request(),
                        Tamper.fill(honest, EGG_POT, BEN, f -> new Fill(BEN, 3, f.portions())),
                        "containers a day",
                        "shopping list",
                        "stock"),
                // The pantry's 100 g of oats are enough for one pot.
                one(
                        "one container too few in the batch",
                        request(),
                        Tamper.fill(honest, EGG_POT, BEN, f -> new Fill(BEN, 1, f.portions())),
                        "containers a day",
                        "dish count",
                        "shopping list",
                        "stock"),
                one(
                        "a dish in two batches",
                        request(),
                        Tamper.batches(honest, AuditOfPackingTest::split),
                        "dish count"),
                one(
                        "two fillings of a dish for one eater",
                        request(),
                        Tamper.dish(honest, CHICKEN_RICE, b -> {
                            List<Portion> portions = b.fills().get(0).portions();
                            return new Batch(
                                    b.dish(),
                                    List.of(
                                            new Fill(BEN, 3, portions),
                                            new Fill(BEN, 3, portions),
                                            b.fills().get(1)));
                        }),
                        "containers a day"));
    }

    private static List<Batch> split(List<Batch> batches) {
        List<Batch> split = new ArrayList<>();
        batches.get(0).fills().forEach(fill -> split.add(new Batch(CHICKEN_RICE, List.of(fill))));
        split.add(batches.get(1));
        return split;
    }
}
