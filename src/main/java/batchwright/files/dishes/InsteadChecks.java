package batchwright.files.dishes;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Variant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What may take a food's place must leave a part that can be weighed, and a dish that has not too many variants. */
final class InsteadChecks {
    /** Each is a dish more to choose from. */
    private static final int MOST_VARIANTS = 7;

    private InsteadChecks() {}

    /** A problem, and what was expected. */
    record Wrong(String what, String expected) {}

    static List<Wrong> ofPart(List<Ingredient> mix, boolean inPieces, boolean fatPouredOff) {
        List<Wrong> wrong = new ArrayList<>();
        if (mix.stream()
                .allMatch(i -> !i.instead().nothing() && i.instead().others().isEmpty())) {
            return wrong;
        }
        if (inPieces || fatPouredOff) {
            wrong.add(new Wrong(
                    "foods of a part %s cannot be swapped".formatted(inPieces ? "in pieces" : "with fat poured off"),
                    "expected no \", or\" in this mix"));
        }
        if (mix.stream().allMatch(i -> i.instead().nothing())) {
            wrong.add(new Wrong(
                    "everything in this mix may be left out",
                    "expected optional: yes for a part that may be left out, in place of \", or leave out\""));
        }
        for (Ingredient one : mix) {
            one.instead().others().stream()
                    .map(Ingredient::food)
                    .filter(other -> isIn(other, mix))
                    .forEach(other -> wrong.add(new Wrong(
                            "%s would take the place of %s, but is in this mix".formatted(other, one.food()),
                            "expected a food that is not in the same mix")));
        }
        return wrong;
    }

    private static boolean isIn(Food food, List<Ingredient> mix) {
        return mix.stream().anyMatch(i -> i.food().equals(food));
    }

    static Optional<Wrong> ofDish(Dish dish) {
        long variants = Variant.count(dish);
        return variants <= MOST_VARIANTS
                ? Optional.empty()
                : Optional.of(new Wrong(
                        "with all that may be swapped, this dish can be cooked in %d other ways".formatted(variants),
                        "expected at most %d: fewer \", or\"".formatted(MOST_VARIANTS)));
    }
}
