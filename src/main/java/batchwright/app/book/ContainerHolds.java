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
import batchwright.food.origin.Origin;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What one container of a lot holds: by the grams of the plan that filled it, else by the recipe as it is written; in each case as much
 * of it as gives the energy that the book says.
 *
 * @param grams cooked
 * @param cooked the dish, with the foods that were swapped in it
 * @param parts those of its parts that are in the container; all of them where nobody knows
 */
record ContainerHolds(int grams, Nutrients holds, Dish cooked, List<Part> parts) {
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
        List<Part> parts = cooked.parts().stream()
                .filter(part -> fill.map(f -> isIn(f, part)).orElse(true))
                .toList();
        Optional<BigDecimal> kcal =
                lot.each().kcal().or(() -> fill.flatMap(f -> f.each().kcal()));
        return kcal.filter(k -> k.signum() > 0 && whole.get(Nutrient.ENERGY).signum() > 0)
                .map(k -> whole.times(k.divide(whole.get(Nutrient.ENERGY), MathContext.DECIMAL64)))
                .map(holds -> new ContainerHolds(grams(holds), holds, cooked, parts));
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

    private static boolean isIn(KeptFill fill, Part part) {
        return fill.parts().stream().anyMatch(kept -> kept.part().equals(part.name()) && kept.rawGrams() > 0);
    }

    /** What its foods are made of for certain; of parts that can be left out only those that were filled in. */
    Set<Origin> madeOf() {
        return parts.stream()
                .flatMap(part -> part.mix().stream())
                .flatMap(ingredient -> ingredient.food().origins().certain().stream())
                .collect(Collectors.toSet());
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

    private static int grams(Nutrients holds) {
        return holds.get(Nutrient.COOKED_WEIGHT)
                .setScale(0, RoundingMode.HALF_UP)
                .max(BigDecimal.ONE)
                .intValueExact();
    }
}
