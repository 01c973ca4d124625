package batchwright.audit;

import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.plan.Batch;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Fill;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Purchase;
import batchwright.plan.Seat;
import java.math.BigDecimal;
import java.util.Map;
import java.util.function.BiConsumer;

/** A plan beside what was asked, and what its decisions come to when recomputed. */
record Evidence(PlanRequest request, Plan plan, Known known, Eaten eaten) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    static Evidence of(PlanRequest request, Plan plan) {
        var known = new Known(request);
        return new Evidence(request, plan, known, new Eaten(plan, known));
    }

    /** Every day of every eater at the table; the seat is the one that was asked for. */
    void days(BiConsumer<Seat, Day> look) {
        for (EaterDays eater : plan.eaters()) {
            known.seat(eater.seat().eater()).ifPresent(seat -> eater.days().forEach(day -> look.accept(seat, day)));
        }
    }

    void fills(BiConsumer<Batch, Fill> look) {
        plan.batches().forEach(batch -> batch.fills().forEach(fill -> look.accept(batch, fill)));
    }

    /** Edible grams turned into grams as purchased. */
    BigDecimal asPurchased(Food food, BigDecimal edible) {
        return edible.multiply(HUNDRED).divide(HUNDRED.subtract(food.refusePercent()), Tolerance.DIGITS);
    }

    /** Grams in the packs of a line of the shopping list. */
    static BigDecimal bought(Purchase purchase) {
        BigDecimal grams = BigDecimal.ZERO;
        for (Map.Entry<Pack, Integer> line : purchase.packs().entrySet()) {
            grams = grams.add(line.getKey().grams().multiply(BigDecimal.valueOf(line.getValue())));
        }
        return grams;
    }

    /** Checkout cost at the files' prices [minor units]. */
    long costMinor() {
        return plan.shopping().stream().mapToLong(this::costMinor).sum();
    }

    /** What one line of the shopping list costs at the files' prices [minor units]. */
    long costMinor(Purchase purchase) {
        long minor = 0;
        for (Map.Entry<Pack, Integer> line : purchase.packs().entrySet()) {
            Pack pack = known.pack(line.getKey()).orElse(line.getKey());
            minor = Math.addExact(minor, Math.multiplyExact(pack.price().minor(), (long) line.getValue()));
        }
        return minor;
    }
}
