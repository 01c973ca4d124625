package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.FatPouredOff;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import batchwright.food.Measure;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.limit.DayTarget;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Requests that differ from another in one thing. */
final class Variants {
    private Variants() {}

    static PlanRequest kitchen(PlanRequest r, UnaryOperator<Kitchen> change) {
        return new PlanRequest(
                change.apply(r.kitchen()), r.seats(), r.days(), r.budget(), r.mostDishes(), r.patience());
    }

    static PlanRequest seats(PlanRequest r, List<Seat> seats) {
        return new PlanRequest(r.kitchen(), seats, r.days(), r.budget(), r.mostDishes(), r.patience());
    }

    static PlanRequest days(PlanRequest r, int days) {
        return new PlanRequest(r.kitchen(), r.seats(), days, r.budget(), r.mostDishes(), r.patience());
    }

    static PlanRequest targets(PlanRequest r, UnaryOperator<DayTarget> change) {
        return seats(
                r,
                r.seats().stream()
                        .map(seat -> new Seat(seat.eater(), change.apply(seat.target())))
                        .toList());
    }

    static PlanRequest pantry(PlanRequest r, Food food, int moreGrams) {
        return kitchen(r, k -> {
            List<Lot> lots = new ArrayList<>(k.lotsOf(food));
            lots.add(Lot.of(BigDecimal.valueOf(moreGrams)));
            return withPantry(k, food, lots);
        });
    }

    /** Every lot at home on two lines. */
    static PlanRequest pantryInHalves(PlanRequest r) {
        return kitchen(r, k -> {
            Map<Food, List<Lot>> pantry = new LinkedHashMap<>(k.pantry());
            pantry.replaceAll((food, lots) -> lots.stream()
                    .map(lot -> new Lot(lot.grams().divide(BigDecimal.valueOf(2)), lot.useBy()))
                    .flatMap(half -> Stream.of(half, half))
                    .toList());
            return new Kitchen(
                    k.foods(), k.measures(), k.yields(), k.packs(), k.dishes(), pantry, k.currency(), k.cookingDay());
        });
    }

    private static Kitchen withPantry(Kitchen k, Food food, List<Lot> lots) {
        Map<Food, List<Lot>> pantry = new LinkedHashMap<>(k.pantry());
        pantry.put(food, lots);
        return new Kitchen(
                k.foods(), k.measures(), k.yields(), k.packs(), k.dishes(), pantry, k.currency(), k.cookingDay());
    }

    /** Cooked so many days later, with the same dates in the pantry. */
    static PlanRequest cookingDay(PlanRequest r, int daysLater) {
        return kitchen(
                r,
                k -> new Kitchen(
                        k.foods(),
                        k.measures(),
                        k.yields(),
                        k.packs(),
                        k.dishes(),
                        k.pantry(),
                        k.currency(),
                        k.cookingDay().plusDays(daysLater)));
    }

    static PlanRequest withoutDates(PlanRequest r) {
        return kitchen(r, k -> {
            Map<Food, List<Lot>> pantry = new LinkedHashMap<>(k.pantry());
            pantry.replaceAll((food, lots) ->
                    lots.stream().map(lot -> Lot.of(lot.grams())).toList());
            return new Kitchen(
                    k.foods(), k.measures(), k.yields(), k.packs(), k.dishes(), pantry, k.currency(), k.cookingDay());
        });
    }

    static PlanRequest packs(PlanRequest r, UnaryOperator<Map<Food, List<Pack>>> change) {
        return kitchen(
                r,
                k -> new Kitchen(
                        k.foods(),
                        k.measures(),
                        k.yields(),
                        change.apply(new LinkedHashMap<>(k.packs())),
                        k.dishes(),
                        k.pantry(),
                        k.currency(),
                        k.cookingDay()));
    }

    static PlanRequest anotherPack(PlanRequest r, Pack pack) {
        return packs(r, packs -> {
            List<Pack> sold = new ArrayList<>(packs.getOrDefault(pack.food(), List.of()));
            sold.add(pack);
            packs.put(pack.food(), sold);
            return packs;
        });
    }

    static PlanRequest anotherDish(PlanRequest r, Dish dish) {
        return kitchen(r, k -> {
            Map<String, Dish> dishes = new LinkedHashMap<>(k.dishes());
            dishes.put(dish.id(), dish);
            return k.withDishes(dishes);
        });
    }

    /** Fat poured off of most parts that have some, up to four fifths of it; in tenths of a gram. */
    static PlanRequest fatPouredOff(PlanRequest r, long seed) {
        var random = new Random(seed);
        PlanRequest changed = r;
        for (Dish d : r.kitchen().dishes().values()) {
            List<Part> parts =
                    d.parts().stream().map(p -> fatPouredOff(p, random)).toList();
            changed = anotherDish(
                    changed,
                    new Dish(
                            d.id(),
                            d.name(),
                            d.kind(),
                            d.fridgeDays(),
                            d.freezes(),
                            d.reheat(),
                            parts,
                            d.staples(),
                            d.steps()));
        }
        return changed;
    }

    private static Part fatPouredOff(Part p, Random random) {
        BigDecimal most = FatPouredOff.fatIn(p.mix()).multiply(FatPouredOff.MOST_SHARE);
        int tenths = random.nextInt(most.movePointRight(1).intValue() + 1);
        var fat = new FatPouredOff(BigDecimal.valueOf(tenths, 1));
        return new Part(p.name(), p.optional(), p.stepGrams(), p.pieces(), p.leastGrams(), p.mostGrams(), p.mix(), fat);
    }

    /** One more food in the catalogue, with a pack and as a snack. */
    static PlanRequest anotherFood(PlanRequest r, Pack pack, Measure measure) {
        return anotherPack(
                kitchen(r, k -> {
                    Map<String, Food> foods = new LinkedHashMap<>(k.foods());
                    foods.put(pack.food().id(), pack.food());
                    Map<Food, List<Measure>> measures = new LinkedHashMap<>(k.measures());
                    measures.put(pack.food(), List.of(measure));
                    return new Kitchen(
                            foods,
                            measures,
                            k.yields(),
                            k.packs(),
                            k.dishes(),
                            k.pantry(),
                            k.currency(),
                            k.cookingDay());
                }),
                pack);
    }

    static PlanRequest pricesTimes(PlanRequest r, int factor) {
        return packs(r, packs -> {
                    packs.replaceAll((food, sold) -> sold.stream()
                            .map(p -> new Pack(
                                    p.food(),
                                    p.shop(),
                                    p.label(),
                                    p.contents(),
                                    p.price().times(factor),
                                    Optional.empty(),
                                    p.seen(),
                                    p.note()))
                            .toList());
                    return packs;
                })
                .withBudget(r.budget().map(budget -> budget.times(factor)));
    }

    static PlanRequest withBudget(PlanRequest r, long minor) {
        return r.withBudget(Optional.of(new Money(minor)));
    }

    /** The same kitchen and eaters with every list and map in another order. */
    static PlanRequest shuffled(PlanRequest r, long seed) {
        var random = new Random(seed);
        List<Seat> seats = new ArrayList<>(r.seats());
        Collections.shuffle(seats, random);
        return seats(
                kitchen(
                        r,
                        k -> new Kitchen(
                                shuffled(k.foods(), random),
                                shuffledLists(k.measures(), random),
                                k.yields(),
                                shuffledLists(k.packs(), random),
                                shuffled(k.dishes(), random),
                                shuffledLists(k.pantry(), random),
                                k.currency(),
                                k.cookingDay())),
                seats);
    }

    private static <K, V> Map<K, List<V>> shuffledLists(Map<K, List<V>> map, Random random) {
        Map<K, List<V>> shuffled = shuffled(map, random);
        shuffled.replaceAll((key, list) -> {
            List<V> other = new ArrayList<>(list);
            Collections.shuffle(other, random);
            return other;
        });
        return shuffled;
    }

    private static <K, V> Map<K, V> shuffled(Map<K, V> map, Random random) {
        List<Map.Entry<K, V>> entries = new ArrayList<>(map.entrySet());
        Collections.shuffle(entries, random);
        Map<K, V> shuffled = new LinkedHashMap<>();
        entries.forEach(entry -> shuffled.put(entry.getKey(), entry.getValue()));
        return shuffled;
    }
}
