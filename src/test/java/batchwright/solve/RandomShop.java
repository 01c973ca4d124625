package batchwright.solve;

import batchwright.food.Contents;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import batchwright.food.Pack;
import batchwright.plan.PlanRequest;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/** A random request in whose shop some foods are sold loose or in multipacks, and in whose pantry some lots have a date. */
public final class RandomShop {
    /** Other random numbers than those of the request of the same seed. */
    private static final long OTHER = 1_000_003;

    private final RandomGenerator random;
    private final LocalDate cookingDay;
    private final int days;

    private RandomShop(long seed, PlanRequest request) {
        this.random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed + OTHER);
        this.cookingDay = request.kitchen().cookingDay();
        this.days = request.days();
    }

    /** {@link RandomProblems#of} with such a shop and pantry. */
    static PlanRequest of(long seed) {
        return of(seed, RandomProblems.of(seed));
    }

    /** Any request with such a shop and pantry. */
    public static PlanRequest of(long seed, PlanRequest request) {
        var shop = new RandomShop(seed, request);
        return Variants.kitchen(request, shop::changed);
    }

    /** Any request with some of every food at home: what is there is best used up, by other containers on other days. */
    public static PlanRequest wellStocked(long seed, PlanRequest request) {
        var shop = new RandomShop(seed, request);
        return Variants.kitchen(request, shop::stocked);
    }

    private Kitchen stocked(Kitchen k) {
        Map<Food, List<Lot>> pantry = new LinkedHashMap<>();
        for (Food food : k.foods().values()) {
            pantry.put(food, List.of(Lot.of(BigDecimal.valueOf(random.nextInt(10, 60) * 10L))));
        }
        return new Kitchen(
                k.foods(), k.measures(), k.yields(), k.packs(), k.dishes(), pantry, k.currency(), k.cookingDay());
    }

    private Kitchen changed(Kitchen k) {
        Map<Food, List<Pack>> packs = new LinkedHashMap<>(k.packs());
        packs.replaceAll((food, sold) -> sold.stream().map(this::changed).toList());
        Map<Food, List<Lot>> pantry = new LinkedHashMap<>();
        for (Food food : k.foods().values()) {
            List<Lot> lots = lots();
            if (!lots.isEmpty()) {
                pantry.put(food, lots);
            }
        }
        return new Kitchen(
                k.foods(), k.measures(), k.yields(), packs, k.dishes(), pantry, k.currency(), k.cookingDay());
    }

    private Pack changed(Pack pack) {
        int kind = random.nextInt(10);
        if (kind < 4) {
            return pack.looseBy(BigDecimal.valueOf(random.nextInt(4, 31) * 5L));
        }
        if (kind < 7) {
            BigDecimal unit = BigDecimal.valueOf(random.nextInt(8, 50) * 5L);
            Optional<BigDecimal> drained =
                    random.nextBoolean() ? Optional.of(unit.subtract(BigDecimal.valueOf(15))) : Optional.empty();
            var contents = new Contents(random.nextInt(1, 5), unit, drained);
            return new Pack(
                    pack.food(),
                    pack.shop(),
                    pack.label(),
                    contents,
                    pack.price(),
                    Optional.empty(),
                    pack.seen(),
                    pack.note());
        }
        return pack;
    }

    /** From the day before cooking to the day after the plan, or without a date. */
    private List<Lot> lots() {
        List<Lot> lots = new ArrayList<>();
        while (random.nextInt(10) < 5) {
            Optional<LocalDate> useBy = random.nextInt(4) == 0
                    ? Optional.empty()
                    : Optional.of(cookingDay.plusDays(random.nextInt(-1, days + 1)));
            lots.add(new Lot(BigDecimal.valueOf(random.nextInt(2, 60) * 10L), useBy));
        }
        return lots;
    }
}
