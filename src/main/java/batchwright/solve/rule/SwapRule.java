package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.food.Part;
import batchwright.food.Variant;
import batchwright.plan.Seat;
import batchwright.solve.mip.Expression;
import java.util.List;

/**
 * A batch is cooked as it is written, or as one of the dish's variants; then all containers of it hold what that is made of. Rows in grams
 * over all containers.
 */
public record SwapRule() implements Rule {
    @Override
    public void addTo(Draft draft) {
        for (Dish dish : draft.menu().dishes()) {
            if (!draft.menu().variants(dish).isEmpty()) {
                oneAtMost(draft, dish);
                draft.request().seats().stream()
                        .filter(seat -> draft.menu().dishes(seat).contains(dish))
                        .forEach(seat -> dish.parts().forEach(part -> add(draft, seat, dish, part)));
            }
        }
    }

    /** A batch is one variant at most. */
    public static void oneAtMost(Draft draft, Dish dish) {
        var variants = new Expression().plus(draft.cooked(dish), -1);
        draft.menu().variants(dish).forEach(variant -> variants.plus(draft.cookedAs(variant), 1));
        draft.model().atMost("one_variant." + dish.id(), variants, 0);
    }

    private static void add(Draft draft, Seat seat, Dish dish, Part part) {
        List<Variant> changing = draft.menu().variants(dish).stream()
                .filter(variant -> variant.changes(part))
                .toList();
        double most = (double) part.mostGrams() * draft.mostContainers(seat, dish);
        if (most > 0) {
            String row = part.name() + "." + dish.id() + "." + seat.eater().id();
            follow(
                    draft,
                    row,
                    draft.grams(seat, dish, part),
                    most,
                    changing,
                    changing.stream().map(v -> draft.gramsAs(seat, v, part)).toList());
        }
    }

    /**
     * For each variant an amount that is all of it when the batch is that variant, and nothing when it is not.
     *
     * @param all the amount, whatever the batch is
     * @param most that it can be
     */
    public static void follow(
            Draft draft, String row, Expression all, double most, List<Variant> variants, List<Expression> amounts) {
        var together = new Expression().plus(all, -1);
        var written = new Expression().plus(all, 1);
        for (int k = 0; k < variants.size(); k++) {
            Expression is = draft.cookedAs(variants.get(k));
            Expression amount = amounts.get(k);
            together.plus(amount, 1);
            written.plus(amount, -1).plus(is, most);
            draft.model()
                    .atMost(
                            "swap_most." + row + "." + (k + 1),
                            new Expression().plus(amount, 1).plus(is, -most),
                            0);
        }
        if (!variants.isEmpty()) {
            draft.model().atMost("swap_some." + row, together, 0);
            draft.model().atMost("swap_none." + row, written, most);
        }
    }
}
