package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.food.Part;
import batchwright.plan.Seat;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Expression;

/**
 * The raw grams of a part in each container lie in its range; an optional part is left out of all containers of a dish for an
 * eater, or is in all of them. Rows in grams over all containers.
 */
public record PartRangeRule() implements Rule {
    @Override
    public void addTo(Draft draft) {
        for (Seat seat : draft.request().seats()) {
            for (Dish dish : draft.menu().dishes(seat)) {
                for (Part part : dish.parts()) {
                    add(draft, seat, dish, part);
                }
            }
        }
    }

    private static void add(Draft draft, Seat seat, Dish dish, Part part) {
        String row =
                "part." + part.name() + "." + dish.id() + "." + seat.eater().id();
        Expression grams = draft.grams(seat, dish, part);
        Expression count = draft.containers(seat, dish);
        draft.model().atMost(row + ".most", new Expression().plus(grams, 1).plus(count, -part.mostGrams()), 0);
        Expression aboveLeast = new Expression().plus(grams, 1).plus(count, -part.leastGrams());
        var kept = draft.kept(seat, dish, part);
        if (kept.isEmpty()) {
            draft.model().atLeast(row + ".least", aboveLeast, 0);
            return;
        }
        // Left out: no grams. In: at least the least in each container. The factor is all containers there can be.
        Column in = kept.get();
        double containers = draft.mostContainers(seat, dish);
        draft.model().atMost(row + ".in", new Expression().plus(grams, 1).plus(in, -containers * part.mostGrams()), 0);
        double slack = containers * part.leastGrams();
        draft.model().atLeast(row + ".least", aboveLeast.plus(in, -slack), -slack);
    }
}
