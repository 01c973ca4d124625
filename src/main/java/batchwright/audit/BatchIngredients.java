package batchwright.audit;

import batchwright.food.Food;
import batchwright.plan.Batch;
import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** The grams to weigh out for a batch are what its containers hold together. */
record BatchIngredients() implements Inspection {
    @Override
    public String name() {
        return "batch ingredients";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        for (Batch batch : evidence.plan().batches()) {
            Map<Food, BigDecimal> stated = batch.ingredients();
            Grams recomputed = evidence.eaten().inBatch(batch);
            Set<Food> foods = new LinkedHashSet<>(stated.keySet());
            foods.addAll(recomputed.byFood().keySet());
            for (Food food : foods) {
                BigDecimal grams = stated.getOrDefault(food, BigDecimal.ZERO);
                if (!Tolerance.same(grams, recomputed.of(food))) {
                    findings.add(batch.dish().id() + ": " + food.id() + " stated "
                            + Say.against(grams, "recomputed", recomputed.of(food), "g"));
                }
            }
        }
    }
}
