package batchwright.solve.session;

import batchwright.food.Pack;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The cheapest packs of one food that hold enough, all of them by weight or none; of equally cheap ones the fewest. Tries every combination. */
public final class PackCover {
    private final List<Pack> packs;
    private List<Integer> best = List.of();
    private long leastCost = Long.MAX_VALUE;
    private int fewest = Integer.MAX_VALUE;

    private PackCover(List<Pack> packs) {
        this.packs = packs.stream()
                .sorted(Comparator.comparing(Pack::grams).reversed())
                .toList();
    }

    /** One entry for each pack, the largest first: without any one there would be too little. Empty when none is sold. */
    public static List<Pack> of(List<Pack> sold, BigDecimal grams) {
        if (sold.isEmpty() || grams.signum() <= 0) {
            return List.of();
        }
        List<Pack> loose = sold.stream().filter(Pack::isLoose).toList();
        List<Pack> packs = sold.stream().filter(pack -> !pack.isLoose()).toList();
        return loose.isEmpty() || packs.isEmpty()
                ? new PackCover(sold).of(grams)
                : cheaper(new PackCover(packs).of(grams), new PackCover(loose).of(grams));
    }

    private static List<Pack> cheaper(List<Pack> one, List<Pack> other) {
        return cost(other) < cost(one) ? other : one;
    }

    private static long cost(List<Pack> bought) {
        return bought.stream().mapToLong(pack -> pack.price().minor()).sum();
    }

    private List<Pack> of(BigDecimal grams) {
        PackCover cover = this;
        cover.search(0, grams, 0, new ArrayList<>());
        List<Pack> bought = new ArrayList<>();
        for (int p = 0; p < cover.packs.size(); p++) {
            for (int n = 0; n < cover.best.get(p); n++) {
                bought.add(cover.packs.get(p));
            }
        }
        return bought;
    }

    private void search(int at, BigDecimal missing, long cost, List<Integer> counts) {
        if (cost > leastCost) {
            return;
        }
        Pack pack = packs.get(at);
        int most = Math.max(
                0, missing.divide(pack.grams(), 0, RoundingMode.CEILING).intValueExact());
        boolean last = at == packs.size() - 1;
        for (int n = last ? most : 0; n <= most; n++) {
            counts.add(n);
            long here = cost + pack.price().minor() * n;
            if (last) {
                take(here, counts);
            } else {
                search(at + 1, missing.subtract(pack.grams().multiply(BigDecimal.valueOf(n))), here, counts);
            }
            counts.remove(counts.size() - 1);
        }
    }

    private void take(long cost, List<Integer> counts) {
        int packsBought = counts.stream().mapToInt(Integer::intValue).sum();
        if (cost < leastCost || (cost == leastCost && packsBought < fewest)) {
            leastCost = cost;
            fewest = packsBought;
            best = List.copyOf(counts);
        }
    }
}
