package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.plan.Seat;
import batchwright.solve.mip.Expression;
import batchwright.solve.rule.Amounts;
import batchwright.solve.rule.Draft;
import java.util.function.Function;

/** What an eater takes in over all days. */
final class Intake {
    private Intake() {}

    static Expression of(Draft draft, Seat seat, Nutrient nutrient, int days, Function<Measure, Expression> snacks) {
        var sum = Expression.of(Amounts.inAlways(seat, nutrient) * days);
        for (Dish dish : draft.menu().dishes(seat)) {
            sum.plus(Amounts.inContainers(draft, seat, dish, nutrient), 1);
        }
        return plusSnacks(sum, draft, seat, nutrient, snacks);
    }

    static Expression plusSnacks(
            Expression sum, Draft draft, Seat seat, Nutrient nutrient, Function<Measure, Expression> snacks) {
        for (Measure measure : draft.menu().snacks(seat)) {
            sum.plus(snacks.apply(measure), Amounts.inMeasure(measure, nutrient));
        }
        return sum;
    }
}
