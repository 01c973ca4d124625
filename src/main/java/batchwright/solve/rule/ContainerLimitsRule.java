package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.limit.Limit;
import batchwright.limit.Scope;
import batchwright.solve.mip.Expression;

/** Each container keeps the limits of containers. Rows in the limit's unit, over all containers of a dish for an eater. */
public record ContainerLimitsRule() implements Rule {
    @Override
    public void addTo(Draft draft) {
        EachLimit.of(draft.request().seats(), Scope.CONTAINER, (seat, limit) -> {
            for (Dish dish : draft.menu().dishes(seat)) {
                if (alwaysKept(draft.menu(), dish, limit)) {
                    continue;
                }
                add(
                        draft,
                        limit.id() + "." + dish.id() + "." + seat.eater().id(),
                        limit,
                        Amounts.inContainers(draft, seat, dish, limit.measured()),
                        draft.containers(seat, dish));
            }
        });
    }

    /** Whether no container of the dish can be too full; said only of what has no least. */
    public static boolean alwaysKept(Menu menu, Dish dish, Limit limit) {
        return !limit.range().hasLeast()
                && dish.parts().stream()
                                .mapToDouble(part -> part.mostGrams()
                                        * menu.ways(dish, part)
                                                .mapToDouble(p -> Amounts.inGram(p, limit.measured()))
                                                .max()
                                                .orElse(0))
                                .sum()
                        <= limit.range().mostOrInfinity();
    }

    /** So many containers hold so much. */
    public static void add(Draft draft, String row, Limit limit, Expression holds, Expression containers) {
        double least = limit.range().least();
        double most = limit.range().mostOrInfinity();
        if (least > 0) {
            draft.model()
                    .atLeast(row + ".least", new Expression().plus(holds, 1).plus(containers, -least), 0);
        }
        if (most < Double.POSITIVE_INFINITY) {
            draft.model().atMost(row + ".most", new Expression().plus(holds, 1).plus(containers, -most), 0);
        }
    }
}
