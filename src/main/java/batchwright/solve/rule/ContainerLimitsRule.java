package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.food.Nutrient;
import batchwright.limit.Limit;
import batchwright.limit.Scope;
import batchwright.plan.Seat;
import batchwright.solve.mip.Expression;

/**
 * Each container keeps the limits of containers, also for each 100 g of it. Rows in the unit of what is measured, over all
 * containers of a dish for an eater.
 */
public record ContainerLimitsRule() implements Rule {
    @Override
    public void addTo(Draft draft) {
        EachLimit.of(draft.request().seats(), Scope.CONTAINER, (seat, limit) -> each(draft, seat, limit));
        EachLimit.of(draft.request().seats(), Scope.PER_100_G, (seat, limit) -> each(draft, seat, limit));
    }

    private static void each(Draft draft, Seat seat, Limit limit) {
        for (Dish dish : draft.menu().dishes(seat)) {
            if (!alwaysKept(draft.menu(), dish, limit)) {
                add(
                        draft,
                        limit.id() + "." + dish.id() + "." + seat.eater().id(),
                        limit,
                        Amounts.inContainers(draft, seat, dish, limit.measured()),
                        limit.scope() == Scope.PER_100_G
                                ? new Expression()
                                        .plus(
                                                Amounts.inContainers(draft, seat, dish, Nutrient.COOKED_WEIGHT),
                                                Amounts.PER_100_G)
                                : draft.containers(seat, dish));
            }
        }
    }

    /** Whether no container of the dish can be too full; said only of what has no least. */
    public static boolean alwaysKept(Menu menu, Dish dish, Limit limit) {
        return limit.scope() == Scope.CONTAINER
                && !limit.range().hasLeast()
                && dish.parts().stream()
                                .mapToDouble(part -> part.mostGrams()
                                        * menu.ways(dish, part)
                                                .mapToDouble(p -> Amounts.inGram(p, limit.measured()))
                                                .max()
                                                .orElse(0))
                                .sum()
                        <= limit.range().mostOrInfinity();
    }

    /**
     * So much for each.
     *
     * @param each containers, or hundreds of grams that they weigh
     */
    public static void add(Draft draft, String row, Limit limit, Expression holds, Expression each) {
        double least = limit.range().least();
        double most = limit.range().mostOrInfinity();
        if (least > 0) {
            draft.model()
                    .atLeast(row + ".least", new Expression().plus(holds, 1).plus(each, -least), 0);
        }
        if (most < Double.POSITIVE_INFINITY) {
            draft.model().atMost(row + ".most", new Expression().plus(holds, 1).plus(each, -most), 0);
        }
    }
}
