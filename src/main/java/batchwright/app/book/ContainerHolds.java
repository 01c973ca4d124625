package batchwright.app.book;

import batchwright.book.BoxesLeft;
import batchwright.book.KeptPlan;
import batchwright.book.KeptPlan.KeptBatch;
import batchwright.book.KeptPlan.KeptFill;
import batchwright.book.KeptPlan.KeptPart;
import batchwright.book.KeptPlans;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.food.Part;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * What one container of a lot holds: by the grams of the plan that filled it, else by the recipe as it is written; in each case as much
 * of it as gives the energy that the book says.
 *
 * @param grams cooked
 */
record ContainerHolds(int grams, Nutrients holds) {
    /** Empty when the dish is not known any more, or no energy. */
    static Optional<ContainerHolds> of(BoxesLeft.Lot lot, Kitchen kitchen, KeptPlans plans) {
        Dish dish = kitchen.dish(lot.boxes().dish()).orElse(null);
        if (dish == null) {
            return Optional.empty();
        }
        Optional<KeptPlan> plan = plans.plans().stream()
                .filter(kept -> kept.covers(lot.filled()))
                .filter(kept -> fill(kept, lot).isPresent())
                .findFirst();
        Optional<KeptFill> fill = plan.flatMap(kept -> fill(kept, lot));
        Dish cooked = plan.flatMap(kept -> batch(kept, lot))
                .flatMap(batch -> new KeptDish(kitchen).cooked(batch, dish))
                .orElse(dish);
        Nutrients whole = fill.map(f -> filled(cooked, f)).orElseGet(() -> written(dish));
        Optional<BigDecimal> kcal =
                lot.each().kcal().or(() -> fill.flatMap(f -> f.each().kcal()));
        return kcal.filter(k -> k.signum() > 0 && whole.get(Nutrient.ENERGY).signum() > 0)
                .map(k -> scaled(whole, k.divide(whole.get(Nutrient.ENERGY), MathContext.DECIMAL64)));
    }

    private static Optional<KeptFill> fill(KeptPlan plan, BoxesLeft.Lot lot) {
        return plan.fill(lot.boxes().dish(), lot.boxes().eater(), plan.dayOf(lot.filled()));
    }

    private static Optional<KeptBatch> batch(KeptPlan plan, BoxesLeft.Lot lot) {
        int session = plan.sessionOf(plan.dayOf(lot.filled()));
        return plan.batches().stream()
                .filter(batch -> batch.day() == session
                        && batch.dish().equals(lot.boxes().dish()))
                .findFirst();
    }

    private static Nutrients filled(Dish dish, KeptFill fill) {
        Nutrients sum = Nutrients.NONE;
        for (KeptPart kept : fill.parts()) {
            for (Part part : dish.parts()) {
                if (part.name().equals(kept.part())) {
                    sum = sum.plus(part.per100g().ofGrams(BigDecimal.valueOf(kept.rawGrams())));
                }
            }
        }
        return sum;
    }

    private static Nutrients written(Dish dish) {
        return dish.parts().stream()
                .filter(part -> !part.optional())
                .map(part -> part.per100g().ofGrams(part.writtenGrams()))
                .reduce(Nutrients.NONE, Nutrients::plus);
    }

    private static ContainerHolds scaled(Nutrients whole, BigDecimal factor) {
        Nutrients holds = whole.times(factor);
        return new ContainerHolds(
                holds.get(Nutrient.COOKED_WEIGHT)
                        .setScale(0, RoundingMode.HALF_UP)
                        .max(BigDecimal.ONE)
                        .intValueExact(),
                holds);
    }
}
