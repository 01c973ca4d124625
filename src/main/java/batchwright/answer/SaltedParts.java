package batchwright.answer;

import batchwright.food.Dish;
import batchwright.food.Handled;
import batchwright.food.Part;
import batchwright.food.Step;
import batchwright.plan.Fill;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Which parts of a dish take its salt: who goes without them gets none of it. */
final class SaltedParts {
    private final Set<String> names;

    private SaltedParts(Set<String> names) {
        this.names = names;
    }

    /** Those that are in hand in the steps that take salt; all where the steps do not say. */
    static SaltedParts of(Dish dish) {
        Set<String> names = new HashSet<>();
        for (Step step : dish.steps()) {
            if (step.with().stream().anyMatch(SaltedParts::isSalt)) {
                Set<String> inHand = inHand(dish, step);
                names.addAll(inHand.isEmpty() ? all(dish) : inHand);
            }
        }
        return new SaltedParts(names.isEmpty() ? all(dish) : names);
    }

    private static boolean isSalt(Handled handled) {
        return handled instanceof Handled.OfStaple staple && staple.staple().isSalt();
    }

    private static Set<String> inHand(Dish dish, Step step) {
        Set<String> names = new HashSet<>(step.parts());
        for (Handled handled : step.with()) {
            if (handled instanceof Handled.OfPart part) {
                names.add(part.part());
            } else if (handled instanceof Handled.OfFood food) {
                food.part()
                        .ifPresentOrElse(
                                names::add,
                                () -> dish.parts().stream()
                                        .filter(part -> part.shares().containsKey(food.food()))
                                        .map(Part::name)
                                        .forEach(names::add));
            }
        }
        return names;
    }

    private static Set<String> all(Dish dish) {
        return new HashSet<>(dish.parts().stream().map(Part::name).toList());
    }

    /** Cooked grams of them in some containers. */
    BigDecimal grams(List<Fill> fills) {
        long grams = 0;
        for (Fill fill : fills) {
            grams += (long) fill.containers()
                    * fill.portions().stream()
                            .filter(portion -> names.contains(portion.part().name()))
                            .mapToInt(portion -> portion.cookedGrams())
                            .sum();
        }
        return BigDecimal.valueOf(grams);
    }
}
