package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.plan.Seat;
import batchwright.solve.mip.Completion;
import batchwright.solve.mip.Expression;
import batchwright.solve.mip.OutOfTime;
import batchwright.solve.mip.Stop;
import batchwright.solve.rule.Amounts;
import batchwright.solve.rule.BudgetRule;
import batchwright.solve.rule.UseByRule;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Among plans of equal cost with the same containers on the same days: the one with the fewest dishes that are not cooked as written,
 * then with the least cost of leftovers that spoil
 * (perishable foods, and foods of which stock at home is near its date), then with the fewest packs. Loose goods are one bag
 * however many steps they are, and do not count as packs. A number of steps that the size of the model alone decides is spent
 * on each, so that the choice depends on the files only.
 */
final class TieBreak {
    private static final long MOST_STEPS = 400;
    private static final long LEAST_STEPS = 20;
    /** A step's time grows with about the square of the number of columns; this is what all steps together may take. */
    private static final long WORK = 20_000_000;

    /** However large the model is, each aim takes about a second at most. */
    private static final long MOST_WORK = 600_000_000;

    private static final double SLACK = 1e-6;

    private final DaysSolution found;
    private final Effort effort;

    TieBreak(DaysSolution found, Effort effort) {
        this.found = found;
        this.effort = effort;
    }

    DaysSolution settle() {
        DaysSolution best = found;
        List<Function<DaysDraft, Expression>> aims = aims();
        for (int aim = 0; aim < aims.size(); aim++) {
            DaysSolution sofar = best;
            List<Function<DaysDraft, Expression>> settled = aims.subList(0, aim);
            Function<DaysDraft, Expression> wanted = aims.get(aim);
            double now = wanted.apply(sofar.draft()).value(sofar.values());
            Effort little = effort.steps(steps(), MOST_WORK);
            best = cheapest(new Maker(sofar, settled, wanted, little), now - SLACK, little)
                    .orElse(best);
        }
        return best;
    }

    private List<Function<DaysDraft, Expression>> aims() {
        return swaps(found.draft()).value(found.values()) > 0
                ? List.of(TieBreak::swaps, TieBreak::spoilingLeftovers, TieBreak::packs)
                : List.of(TieBreak::spoilingLeftovers, TieBreak::packs);
    }

    private Optional<DaysSolution> cheapest(Maker maker, double below, Effort little) {
        try {
            return new LayoutSearch(found.draft().layout(), maker, little)
                    .cheapest(below)
                    .found()
                    .map(Completion.Found::solution);
        } catch (OutOfTime over) {
            return Optional.empty();
        }
    }

    private long steps() {
        long columns = found.draft().model().columns().size();
        return Math.max(LEAST_STEPS, Math.min(MOST_STEPS, WORK / (columns * columns)));
    }

    /** All rules; cost and settled aims no worse than so far; the next aim wanted. */
    private record Maker(
            DaysSolution sofar,
            List<Function<DaysDraft, Expression>> settled,
            Function<DaysDraft, Expression> wanted,
            Stop stop)
            implements LayoutSearch.DraftMaker {
        @Override
        public DaysDraft make(Layout layout) {
            DaysDraft draft = Aim.LEAST_COST.complete(
                    new DaysDraft(sofar.draft().request(), sofar.draft().menu(), layout, stop));
            double cost = BudgetRule.cost(sofar.draft()).value(sofar.values());
            draft.model().atMost("keep.cost", BudgetRule.cost(draft), cost + SLACK);
            for (int k = 0; k < settled.size(); k++) {
                double reached = settled.get(k).apply(sofar.draft()).value(sofar.values());
                draft.model().atMost("keep.aim" + k, settled.get(k).apply(draft), reached + SLACK);
            }
            draft.model().minimise(wanted.apply(draft), 0);
            return draft;
        }

        @Override
        public Optional<DaysDraft> withPacks(Layout layout, List<Integer> packs) {
            return Optional.empty();
        }
    }

    /** Dishes that are not cooked as they are written. */
    private static Expression swaps(DaysDraft draft) {
        var swaps = new Expression();
        for (Dish dish : draft.menu().dishes()) {
            draft.menu().variants(dish).forEach(variant -> swaps.plus(draft.cookedAs(variant), 1));
        }
        return swaps;
    }

    /** Cost of those leftovers that spoil [minor units]; what is not sold counts as nothing. */
    private static Expression spoilingLeftovers(DaysDraft draft) {
        var worth = new Expression();
        for (Pack pack : draft.menu().packs()) {
            if (spoils(draft, pack.food())) {
                worth.plus(draft.packs(pack), (double) pack.price().minor());
            }
        }
        draft.menu().packs().stream()
                .map(Pack::food)
                .distinct()
                .filter(food -> spoils(draft, food))
                .forEach(food -> {
                    double perGram = draft.request().kitchen().packsOf(food).stream()
                            .mapToDouble(p -> p.price().minor() / p.grams().doubleValue())
                            .min()
                            .orElse(0);
                    worth.plus(used(draft, food), -perGram);
                });
        return worth;
    }

    private static boolean spoils(DaysDraft draft, Food food) {
        return food.perishable() || UseByRule.spoils(draft.request(), food);
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
        draft.menu().packs().stream().filter(p -> !p.isLoose()).forEach(p -> packs.plus(draft.packs(p), 1));
        return packs;
    }
}
