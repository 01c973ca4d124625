package batchwright.answer;

import batchwright.plan.Batch;
import batchwright.plan.Fill;
import batchwright.plan.Session;
import java.math.BigDecimal;

/** Grams of cooked food, as weighed out into containers. */
final class CookedWeight {
    private CookedWeight() {}

    static BigDecimal of(Fill fill) {
        return BigDecimal.valueOf((long) fill.containers()
                * fill.portions().stream().mapToInt(p -> p.cookedGrams()).sum());
    }

    static BigDecimal of(Batch batch) {
        return batch.fills().stream().map(CookedWeight::of).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    static BigDecimal of(Session session) {
        return session.batches().stream().map(CookedWeight::of).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
