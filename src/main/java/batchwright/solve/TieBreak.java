package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.plan.Seat;
import batchwright.solve.mip.BranchAndBound;
import batchwright.solve.mip.Expression;
import batchwright.solve.rule.Amounts;
import batchwright.solve.rule.Budget;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/**
 * Among plans of equal cost with the same containers on the same days: the one with the least cost of perishable leftovers,
 * then with the fewest packs. A fixed number of relaxations is spent on each, so that the choice depends on the files only.
 */
final class TieBreak {
    private static final long NODES = 1500;
    private static final double SLACK = 1e-6;

    private final DaysSolution found;
    private final Effort effort;

    TieBreak(DaysSolution found, Effort effort) {
        this.found = found;
        this.effort = effort;
    }

    DaysSolution settle() {
        DaysSolution best = found;
        List<Function<DaysDraft, Expression>> aims = List.of(TieBreak::perishableLeftovers, TieBreak::packs);
        for (int aim = 0; aim < aims.size(); aim++) {
            DaysDraft draft = Aim.LEAST_COST.complete(new DaysDraft(
                    found.draft().request(), found.draft().menu(), found.draft().layout()));
            keep(draft, "cost", Budget.cost(draft), best.values());
            for (int settled = 0; settled < aim; settled++) {
                keep(draft, "aim" + settled, aims.get(settled).apply(draft), best.values());
            }
            Expression wanted = aims.get(aim).apply(draft);
            draft.model().minimise(wanted, 0);
            long[] left = {NODES};
            double now = wanted.value(best.values());
            BooleanSupplier enough = () -> left[0]-- <= 0 || effort.mustStop();
            best = new BranchAndBound<>(draft.model(), new DealOut(draft), now - SLACK, enough)
                    .search()
                    .best()
                    .orElse(best);
        }
        return best;
    }

    private static void keep(DaysDraft draft, String name, Expression expression, double[] values) {
        draft.model().atMost("keep." + name, expression, expression.value(values) + SLACK);
    }

    /** What the perishable part of all leftovers has cost [minor units]. */
    private static Expression perishableLeftovers(DaysDraft draft) {
        var worth = new Expression();
        for (Pack pack : draft.menu().packs()) {
            if (pack.food().perishable()) {
                worth.plus(draft.packs(pack), (double) pack.price().minor());
            }
        }
        draft.menu().packs().stream()
                .map(Pack::food)
                .distinct()
                .filter(Food::perishable)
                .forEach(food -> {
                    double perGram = draft.request().kitchen().packsOf(food).stream()
                            .mapToDouble(p -> p.price().minor() / p.grams().doubleValue())
                            .min()
                            .orElse(0);
                    worth.plus(used(draft, food), -perGram);
                });
        return worth;
    }

    private static Expression used(DaysDraft draft, Food food) {
        var used = new Expression();
        for (Dish dish : draft.menu().dishes()) {
            used.plus(Amounts.usedBy(draft, dish, food), 1);
        }
        for (Seat seat : draft.request().seats()) {
            used.plus(Amounts.usedBySnacks(draft, seat, food), 1);
        }
        return used;
    }

    private static Expression packs(DaysDraft draft) {
        var packs = new Expression();
        draft.menu().packs().forEach(p -> packs.plus(draft.packs(p), 1));
        return packs;
    }
}
