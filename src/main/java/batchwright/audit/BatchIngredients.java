package batchwright.audit;

import batchwright.food.Food;
import batchwright.plan.Batch;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** The grams to weigh out, and of fat to pour off, for a batch are those of all its containers together. */
record BatchIngredients() implements Inspection {
    @Override
    public String name() {
        return "batch ingredients";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        for (Batch batch : evidence.session().batches()) {
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
            inspectFat(batch, recomputed.fatPouredOffByPart(), findings);
        }
    }

    private static void inspectFat(Batch batch, Map<String, BigDecimal> recomputed, Findings findings) {
        Map<String, BigDecimal> stated = new LinkedHashMap<>();
        batch.fatToPourOff().forEach((part, grams) -> stated.merge(part.name(), grams, BigDecimal::add));
        Set<String> parts = new LinkedHashSet<>(stated.keySet());
        parts.addAll(recomputed.keySet());
        for (String part : parts) {
            BigDecimal grams = stated.getOrDefault(part, BigDecimal.ZERO);
            BigDecimal found = recomputed.getOrDefault(part, BigDecimal.ZERO);
            if (!Tolerance.same(grams, found)) {
                findings.add(batch.dish().id() + ", " + part + ": fat poured off stated "
                        + Say.against(grams, "recomputed", found, "g"));
            }
        }
    }
}
