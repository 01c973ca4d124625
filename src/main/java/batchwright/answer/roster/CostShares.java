package batchwright.answer.roster;

import batchwright.food.Food;
import batchwright.plan.Batch;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Fill;
import batchwright.plan.Purchase;
import batchwright.plan.Session;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** What each eater pays of a shopping for all: of every food as they eat of it, of the ways to the shops as much as anybody else. */
public final class CostShares {
    private CostShares() {}

    /** In the order of the eaters; together they are the cost of the session. */
    public static List<Money> of(Session session) {
        List<Map<Food, BigDecimal>> eaten =
                session.eaters().stream().map(eater -> eaten(session, eater)).toList();
        List<BigDecimal> exact = new ArrayList<>();
        BigDecimal way = BigDecimal.valueOf(session.trips().minor())
                .divide(BigDecimal.valueOf(Math.max(1, eaten.size())), MathContext.DECIMAL64);
        Map<Food, BigDecimal> all = new HashMap<>();
        eaten.forEach(mine -> mine.forEach((food, grams) -> all.merge(food, grams, BigDecimal::add)));
        for (Map<Food, BigDecimal> mine : eaten) {
            BigDecimal share = way;
            for (Purchase line : session.shopping()) {
                BigDecimal grams = mine.getOrDefault(line.food(), BigDecimal.ZERO);
                if (grams.signum() > 0) {
                    share = share.add(BigDecimal.valueOf(line.cost().minor())
                            .multiply(grams)
                            .divide(all.getOrDefault(line.food(), grams), MathContext.DECIMAL64));
                }
            }
            exact.add(share);
        }
        return whole(exact, session.cost());
    }

    /** Edible grams. */
    private static Map<Food, BigDecimal> eaten(Session session, EaterDays eater) {
        Map<Food, BigDecimal> grams = new HashMap<>();
        for (Batch batch : session.batches()) {
            List<Fill> fills = batch.fills().stream()
                    .filter(fill -> fill.isFor(eater.seat().eater()))
                    .toList();
            new Batch(batch.dish(), fills).ingredients().forEach((food, g) -> grams.merge(food, g, BigDecimal::add));
        }
        for (Day day : eater.days()) {
            day.snacks().forEach(snack -> grams.merge(snack.measure().food(), snack.grams(), BigDecimal::add));
            day.always().forEach(snack -> grams.merge(snack.measure().food(), snack.grams(), BigDecimal::add));
        }
        return grams;
    }

    /** Whole minor units: those with the greatest parts of one are rounded up. */
    private static List<Money> whole(List<BigDecimal> exact, Money sum) {
        long[] minor = exact.stream()
                .mapToLong(share -> share.setScale(0, RoundingMode.DOWN).longValueExact())
                .toArray();
        long left = sum.minor() - Arrays.stream(minor).sum();
        List<Integer> order = IntStream.range(0, minor.length)
                .boxed()
                .sorted(Comparator.comparing(
                        (Integer i) -> BigDecimal.valueOf(minor[i]).subtract(exact.get(i))))
                .toList();
        for (int i = 0; i < left && i < order.size(); i++) {
            minor[order.get(i)]++;
        }
        return Arrays.stream(minor).mapToObj(Money::new).toList();
    }
}
