package batchwright.solve.rule;

import batchwright.food.Food;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.solve.mip.Expression;

/**
 * Snacks and what is always eaten come from packs, or from stock that keeps until the last day; stock that spoils before is
 * for the batches, which are cooked on day 1 and keep as their dish does. One row for each food with such stock: grams as
 * purchased. Together with {@link StockRule} this is exact: a plan that keeps both rows can be served so, because what is cooked
 * takes the spoiling stock first.
 */
public record UseByRule() implements Rule {
    @Override
    public void addTo(Draft draft) {
        draft.request().kitchen().pantry().keySet().stream()
                .filter(food -> spoils(draft.request(), food))
                .forEach(food -> add(draft, food));
    }

    /** Whether some of the food at home is good on the cooking day, but not until the last day. */
    public static boolean spoils(PlanRequest request, Food food) {
        return request.lastingGrams(food).compareTo(request.kitchen().pantryGrams(food)) < 0;
    }

    private static void add(Draft draft, Food food) {
        var besides = Expression.of(Amounts.usedAlways(draft, food));
        for (Seat seat : draft.request().seats()) {
            besides.plus(Amounts.usedBySnacks(draft, seat, food), 1);
        }
        double lasting = draft.request().lastingGrams(food).doubleValue();
        StockRule.cover(draft, "use_by." + food.id(), food, besides, besides.most(), lasting);
    }
}
