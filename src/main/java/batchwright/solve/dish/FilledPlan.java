package batchwright.solve.dish;

import batchwright.food.Food;
import batchwright.food.Part;
import batchwright.plan.Batch;
import batchwright.plan.DishRequest;
import batchwright.plan.Fill;
import batchwright.plan.Portion;
import batchwright.plan.Proof;
import batchwright.plan.Purchase;
import batchwright.plan.Session;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes of the steps of each part a session of one batch and what is bought for it, in exact decimals. */
final class FilledPlan {
    private FilledPlan() {}

    /** @param steps of each part, in the dish's order */
    static Session of(DishRequest request, List<Integer> steps) {
        List<Part> parts = request.dish().parts();
        List<Portion> portions = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            portions.add(new Portion(parts.get(i), steps.get(i) * parts.get(i).stepGrams()));
        }
        var batch = new Batch(request.dish(), List.of(new Fill(Optional.empty(), request.containers(), portions)));
        return new Session(1, request.forNobody(), List.of(), List.of(batch), shopping(request, batch), Proof.NONE);
    }

    /** In the order of the catalogue. */
    private static List<Purchase> shopping(DishRequest request, Batch batch) {
        Map<Food, BigDecimal> edible = batch.ingredients();
        Map<Food, BigDecimal> atHand = batch.atHand(request.kitchen().shops());
        List<Purchase> shopping = new ArrayList<>();
        for (Food food : request.kitchen().foods().values()) {
            BigDecimal grams = edible.get(food);
            if (grams != null) {
                BigDecimal used = grams.divide(food.edibleShare(), MathContext.DECIMAL64);
                double needed = atHand.getOrDefault(food, BigDecimal.ZERO)
                        .divide(food.edibleShare(), MathContext.DECIMAL64)
                        .doubleValue();
                var shelf = new Shelf(request.kitchen(), food, needed);
                BigDecimal pantry = request.kitchen().pantryGrams(food);
                shopping.add(new Purchase(food, shelf.purchase(needed), used, used.min(pantry)));
            }
        }
        return shopping;
    }
}
