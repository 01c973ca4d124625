package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.food.Nutrient;
import batchwright.person.DayTarget;
import batchwright.plan.Seat;
import batchwright.solve.mip.Expression;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** Each container holds at least and at most so much of one nutrient. Rows in the nutrient's unit, over all containers. */
public record ContainerRule(
        String name, Nutrient nutrient, ToDoubleFunction<DayTarget> least, ToDoubleFunction<DayTarget> most)
        implements Rule {
    public static final ContainerRule CONTAINER_SHARE = new ContainerRule(
            "container share", Nutrient.ENERGY, DayTarget::containerLeastKcal, DayTarget::containerMostKcal);
    public static final ContainerRule CONTAINER_PROTEIN = new ContainerRule(
            "container protein", Nutrient.PROTEIN, DayTarget::containerProteinLeastG, t -> Double.POSITIVE_INFINITY);

    /** Both of them. */
    public static final List<ContainerRule> ALL = List.of(CONTAINER_SHARE, CONTAINER_PROTEIN);

    @Override
    public void addTo(Draft draft) {
        for (Seat seat : draft.request().seats()) {
            double floor = least.applyAsDouble(seat.target());
            double ceiling = most.applyAsDouble(seat.target());
            for (Dish dish : draft.menu().dishes(seat)) {
                Expression holds = Amounts.inContainers(draft, seat, dish, nutrient);
                Expression count = draft.containers(seat, dish);
                String row = "container_" + nutrient.name().toLowerCase(Locale.ROOT) + "." + dish.id() + "."
                        + seat.eater().id();
                draft.model()
                        .atLeast(row + ".least", new Expression().plus(holds, 1).plus(count, -floor), 0);
                if (ceiling < Double.POSITIVE_INFINITY) {
                    draft.model()
                            .atMost(
                                    row + ".most",
                                    new Expression().plus(holds, 1).plus(count, -ceiling),
                                    0);
                }
            }
        }
    }
}
