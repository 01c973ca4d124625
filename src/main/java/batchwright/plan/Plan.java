package batchwright.plan;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Nutrients;
import batchwright.person.Eater;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What to cook, eat and buy. Holds decisions only; every total is worked out from them.
 *
 * @param eaters their days; empty when a dish is cooked for nobody in particular
 */
public record Plan(List<EaterDays> eaters, List<Batch> batches, List<Purchase> shopping, Proof proof) {
    public Plan {
        eaters = List.copyOf(eaters);
        batches = List.copyOf(batches);
        shopping = List.copyOf(shopping);
    }

    public Money cost() {
        return shopping.stream().map(Purchase::cost).reduce(Money.ZERO, Money::plus);
    }

    public Plan withProof(Proof other) {
        return new Plan(eaters, batches, shopping, other);
    }

    /** The line of the shopping list; empty when the plan does not use the food. */
    public Optional<Purchase> purchase(Food food) {
        return shopping.stream().filter(p -> p.food().equals(food)).findFirst();
    }

    /** The containers of a dish for an eater. */
    public Fill fill(Dish dish, Eater eater) {
        return batches.stream()
                .filter(b -> b.dish().equals(dish))
                .flatMap(b -> b.fills().stream())
                .filter(f -> f.isFor(eater))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "dish (" + dish.id() + ") is not cooked for eater (" + eater.id() + ")."));
    }

    /** What the eater's day holds: containers, snacks and what is always eaten. */
    public Nutrients totals(Eater eater, Day day) {
        Nutrients sum = Nutrients.NONE;
        for (Serving serving : day.servings()) {
            sum = sum.plus(fill(serving.dish(), eater).perContainer().times(BigDecimal.valueOf(serving.count())));
        }
        for (Snack snack : day.snacks()) {
            sum = sum.plus(snack.nutrients());
        }
        for (Snack snack : day.always()) {
            sum = sum.plus(snack.nutrients());
        }
        return sum;
    }

    /** What a day of theirs holds on the average; nutrients that some day does not know in full are incomplete. */
    public Nutrients averageDay(EaterDays eater) {
        return eater.days().stream()
                .map(day -> totals(eater.seat().eater(), day))
                .reduce(Nutrients.NONE, Nutrients::plus)
                .dividedBy(eater.days().size());
    }
}
