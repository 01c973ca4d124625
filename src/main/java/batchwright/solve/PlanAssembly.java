package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.food.Variant;
import batchwright.plan.Batch;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Fill;
import batchwright.plan.PlanRequest;
import batchwright.plan.Portion;
import batchwright.plan.Proof;
import batchwright.plan.Purchase;
import batchwright.plan.Seat;
import batchwright.plan.Serving;
import batchwright.plan.Session;
import batchwright.plan.Snack;
import batchwright.solve.Layout.LikeDays;
import batchwright.solve.mip.Column;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns the columns of a solved model into a session of whole steps, whole measures and whole packs. */
final class PlanAssembly {
    private static final double HALF = 0.5;

    private final DaysDraft draft;
    private final double[] values;
    private final Map<Seat, Map<Integer, List<Snack>>> snacks;

    private PlanAssembly(DaysSolution solution) {
        this.draft = solution.draft();
        this.values = solution.values();
        this.snacks = solution.snacks();
    }

    static Session of(DaysSolution solution, Proof proof) {
        var assembly = new PlanAssembly(solution);
        List<Batch> batches = assembly.batches();
        List<EaterDays> eaters = assembly.eaters();
        return new Session(1, assembly.draft.request(), eaters, batches, assembly.shopping(batches, eaters), proof);
    }

    private int whole(Column column) {
        return (int) Math.rint(values[column.index()]);
    }

    private List<Batch> batches() {
        List<Batch> batches = new ArrayList<>();
        for (Dish dish : draft.menu().dishes()) {
            List<Fill> fills = new ArrayList<>();
            for (Seat seat : draft.request().seats()) {
                int count = Lookup.get(draft.layout().containers(), seat).getOrDefault(dish, 0);
                if (count > 0) {
                    fills.add(new Fill(seat.eater(), count, portions(seat, dish)));
                }
            }
            if (!fills.isEmpty()) {
                batches.add(new Batch(asCooked(dish), fills));
            }
        }
        return batches;
    }

    /** The variant that a dish is cooked as; empty when it is cooked as it is written. */
    private Optional<Variant> variant(Dish dish) {
        return draft.menu().variants(dish).stream()
                .filter(variant -> draft.cookedAs(variant).value(values) > HALF)
                .findFirst();
    }

    private Dish asCooked(Dish dish) {
        return variant(dish).map(Variant::dish).orElse(dish);
    }

    private List<Portion> portions(Seat seat, Dish dish) {
        List<Portion> portions = new ArrayList<>();
        for (Part part : dish.parts()) {
            Part cooked = variant(dish).map(variant -> variant.cooked(part)).orElse(part);
            portions.add(new Portion(cooked, whole(draft.stepsColumn(seat, dish, part)) * part.stepGrams()));
        }
        return portions;
    }

    private List<EaterDays> eaters() {
        List<EaterDays> eaters = new ArrayList<>();
        for (Seat seat : draft.request().seats()) {
            List<Day> days = new ArrayList<>();
            for (int day = 1; day <= draft.request().days(); day++) {
                days.add(new Day(day, servings(seat, day), Lookup.get(Lookup.get(snacks, seat), day), always(seat)));
            }
            eaters.add(new EaterDays(seat, days));
        }
        return eaters;
    }

    private List<Serving> servings(Seat seat, int day) {
        List<Serving> servings = new ArrayList<>();
        for (LikeDays group : draft.groups(seat)) {
            if (group.days().contains(day)) {
                group.servings()
                        .forEach((dish, count) -> servings.add(new Serving(
                                asCooked(dish),
                                count,
                                day <= dish.fridgeDays() ? Serving.Storage.FRIDGE : Serving.Storage.FREEZER)));
            }
        }
        return servings;
    }

    private static List<Snack> always(Seat seat) {
        return seat.eater().wishes().always().stream()
                .map(a -> new Snack(a.measure(), a.count()))
                .toList();
    }

    private List<Purchase> shopping(List<Batch> batches, List<EaterDays> eaters) {
        Map<Food, BigDecimal> cooked = new LinkedHashMap<>();
        batches.forEach(b -> b.ingredients().forEach((food, grams) -> cooked.merge(food, grams, BigDecimal::add)));
        PlanRequest request = draft.request();
        Map<Food, BigDecimal> atHand = new LinkedHashMap<>();
        batches.forEach(b -> b.atHand(request.kitchen().shops())
                .forEach((food, grams) -> atHand.merge(food, grams, BigDecimal::add)));
        Map<Food, BigDecimal> edible = new LinkedHashMap<>(cooked);
        for (EaterDays eater : eaters) {
            for (Day day : eater.days()) {
                day.snacks().forEach(s -> edible.merge(s.measure().food(), s.grams(), BigDecimal::add));
                day.always().forEach(s -> edible.merge(s.measure().food(), s.grams(), BigDecimal::add));
            }
        }
        List<Purchase> shopping = new ArrayList<>();
        // In the order of the catalogue, so that the list does not depend on which dish comes first.
        for (Food food : request.kitchen().foods().values()) {
            BigDecimal grams = edible.get(food);
            if (grams != null) {
                BigDecimal used = asPurchased(food, grams);
                BigDecimal inBatches = asPurchased(food, cooked.getOrDefault(food, BigDecimal.ZERO));
                Map<Pack, Integer> packs = new LinkedHashMap<>();
                for (Pack pack : request.kitchen().packsOf(food)) {
                    int count = whole(draft.packs(pack));
                    if (count > 0) {
                        packs.put(pack, count);
                    }
                }
                BigDecimal toCook = asPurchased(food, atHand.getOrDefault(food, BigDecimal.ZERO));
                BigDecimal inAll = used.subtract(inBatches).add(toCook);
                Map<Pack, Integer> needed = new SparePacks(request, food, inAll, toCook).leftOut(packs);
                shopping.add(Purchase.of(request, food, needed, used, inBatches));
            }
        }
        return shopping;
    }

    private static BigDecimal asPurchased(Food food, BigDecimal edible) {
        return edible.divide(food.edibleShare(), MathContext.DECIMAL64);
    }
}
