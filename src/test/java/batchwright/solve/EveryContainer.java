package batchwright.solve;

import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.plan.ContainerWish;
import batchwright.plan.DishRequest;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Every way to fill like containers of one dish and to buy for them, in whole numbers only. Written from what the documents
 * say; shares no code with the solver or the audit but the enumeration of purchases with the other brute force.
 */
final class EveryContainer {
    private static final BigDecimal PARTS = BigDecimal.valueOf(BruteForce.PARTS);

    private final DishRequest request;
    private final List<Food> foods;
    private final List<Way> ways = new ArrayList<>();

    /**
     * One way.
     *
     * @param kcal of one container, exact
     * @param minor least cost of all; {@link EveryPurchase#IMPOSSIBLE} when it cannot be bought
     */
    record Way(BigDecimal kcal, BigDecimal protein, BigDecimal fat, long minor) {
        boolean canBeHad(DishRequest request) {
            return minor != EveryPurchase.IMPOSSIBLE
                    && (request.budget().isEmpty()
                            || minor <= request.budget().get().minor());
        }

        boolean keeps(ContainerWish wish) {
            return wish.energy()
                            .filter(b -> kcal.compareTo(b.leastKcal()) < 0 || kcal.compareTo(b.mostKcal()) > 0)
                            .isEmpty()
                    && wish.proteinLeastG()
                            .filter(p -> protein.compareTo(p) < 0)
                            .isEmpty()
                    && wish.fatMostG().filter(f -> fat.compareTo(f) > 0).isEmpty();
        }
    }

    private EveryContainer(DishRequest request) {
        this.request = request;
        this.foods = List.copyOf(request.kitchen().foods().values());
    }

    /** All that can be bought within the budget, whatever is wished of a container. */
    static List<Way> within(DishRequest request) {
        return all(request).filter(way -> way.canBeHad(request)).toList();
    }

    private static Stream<Way> all(DishRequest request) {
        var every = new EveryContainer(request);
        every.fill(
                0, new long[3], new long[2 * every.foods.size()], new EveryPurchase(request.kitchen(), every.foods, 1));
        return every.ways.stream();
    }

    /** The cheapest way as asked, and of those the nearest to the energy asked for. */
    static Optional<Way> best(DishRequest request) {
        Comparator<Way> best = Comparator.comparingLong(Way::minor);
        return within(request).stream()
                .filter(way -> way.keeps(request.wish()))
                .min(best.thenComparing(way -> distance(request, way)));
    }

    /** From the energy asked for, or without it from the protein. */
    static BigDecimal distance(DishRequest request, Way way) {
        return request.wish()
                .energy()
                .map(band -> way.kcal().subtract(band.aimKcal()).abs())
                .orElseGet(() ->
                        way.protein().subtract(request.wish().proteinLeastG().orElse(BigDecimal.ZERO)));
    }

    private void fill(int from, long[] holds, long[] used, EveryPurchase purchase) {
        List<Part> parts = request.dish().parts();
        if (from == parts.size()) {
            long[] all = new long[used.length];
            for (int f = 0; f < used.length; f++) {
                all[f] = used[f] * request.containers();
            }
            ways.add(new Way(amount(holds[0]), amount(holds[1]), amount(holds[2]), purchase.leastCost(all)));
            return;
        }
        Part part = parts.get(from);
        boolean out = request.without().contains(part.name());
        if (out || (part.optional() && !request.with().contains(part.name()))) {
            fill(from + 1, holds, used, purchase);
        }
        for (int raw = part.leastGrams(); raw <= part.mostGrams() && !out; raw += part.stepGrams()) {
            long[] more = holds.clone();
            long[] moreUsed = used.clone();
            add(part, raw, more, moreUsed);
            fill(from + 1, more, moreUsed, purchase);
        }
    }

    private static BigDecimal amount(long parts) {
        return BigDecimal.valueOf(parts).divide(PARTS, 12, java.math.RoundingMode.HALF_EVEN);
    }

    private void add(Part part, int raw, long[] holds, long[] used) {
        BigDecimal whole = part.mix().stream().map(Ingredient::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
        for (Ingredient i : part.mix()) {
            // Throws when the share is no whole number of parts.
            BigDecimal parts =
                    i.amount().multiply(PARTS).multiply(BigDecimal.valueOf(raw)).divide(whole);
            BigDecimal room =
                    part.pieces() ? BigDecimal.ZERO : request.kitchen().shops().reserve();
            used[foods.indexOf(i.food())] += parts.add(parts.multiply(room)).longValueExact();
            holds[0] += of(i.food(), Nutrient.ENERGY, parts);
            holds[1] += of(i.food(), Nutrient.PROTEIN, parts);
            holds[2] += of(i.food(), Nutrient.FAT, parts);
        }
    }

    private static long of(Food food, Nutrient nutrient, BigDecimal parts) {
        return parts.multiply(food.per100g().get(nutrient)).movePointLeft(2).longValueExact();
    }
}
