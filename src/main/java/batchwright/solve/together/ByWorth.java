package batchwright.solve.together;

import batchwright.food.Contents;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import batchwright.food.Pack;
import batchwright.food.Shops;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A kitchen whose shop sells any amount of every food, at the lowest price by weight of its packs: what one of many eaters costs is then what
 * they add to a large shopping. Money is counted in tenths of the minor unit, and a food is sold in steps that cost one of them, so
 * that no price is rounded.
 */
final class ByWorth {
    /** Of these, one is a step. */
    static final int TO_THE_MINOR_UNIT = 10;

    /** More than any eater eats. */
    private static final BigDecimal PLENTY = BigDecimal.valueOf(1_000_000);

    /** Grams are never too few for their money. */
    private static final MathContext UP = new MathContext(16, RoundingMode.CEILING);

    private ByWorth() {}

    /** To plan by: nothing is at home. */
    static Kitchen of(Kitchen kitchen) {
        Map<Food, List<Pack>> steps = new LinkedHashMap<>();
        kitchen.packs()
                .keySet()
                .forEach(food -> best(kitchen, food).ifPresent(pack -> steps.put(food, List.of(step(pack)))));
        return untimed(kitchen).withPacks(steps).withoutPantry();
    }

    /**
     * To bound by: nobody's part of any plan costs more than here. A step of each food is free, which makes up for the part of a step that
     * is rounded up; what is only at home costs nothing.
     */
    static Kitchen bounding(Kitchen kitchen) {
        Kitchen sold = of(kitchen);
        Map<Food, List<Lot>> free = new LinkedHashMap<>();
        sold.packs()
                .forEach((food, packs) ->
                        free.put(food, List.of(Lot.of(packs.get(0).grams()))));
        kitchen.pantry().keySet().forEach(food -> free.putIfAbsent(food, List.of(Lot.of(PLENTY))));
        return sold.on(kitchen.cookingDay(), free);
    }

    /** What so much of a food is worth [minor units]; nothing when it is not sold. */
    static BigDecimal worth(Kitchen kitchen, Food food, BigDecimal grams) {
        return best(kitchen, food)
                .map(pack -> pack.price().shareOf(grams, pack.grams()))
                .orElse(BigDecimal.ZERO);
    }

    private static Optional<Pack> best(Kitchen kitchen, Food food) {
        return kitchen.packsOf(food).stream().min(ByWorth::byPriceOfAGram);
    }

    static int byPriceOfAGram(Pack one, Pack other) {
        BigDecimal mine = BigDecimal.valueOf(one.price().minor()).multiply(other.grams());
        return mine.compareTo(BigDecimal.valueOf(other.price().minor()).multiply(one.grams()));
    }

    private static Pack step(Pack pack) {
        long minor = pack.price().minor();
        BigDecimal grams = minor == 0 ? PLENTY : pack.grams().divide(BigDecimal.valueOf(minor * TO_THE_MINOR_UNIT), UP);
        return new Pack(
                pack.food(),
                pack.shop(),
                pack.label(),
                Contents.of(grams),
                new Money(minor == 0 ? 0 : 1),
                Optional.empty(),
                pack.seen(),
                pack.note());
    }

    /** The limits of a session are for all together; ways to the shops are not for one. */
    private static Kitchen untimed(Kitchen kitchen) {
        return kitchen.with(kitchen.equipment()
                        .withHandsOnMinutes(OptionalInt.empty())
                        .withDoneWithinMinutes(OptionalInt.empty()))
                .with(Shops.FREE.withReserve(kitchen.shops().reserve()));
    }
}
