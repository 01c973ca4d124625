package batchwright.solve.dish;

import batchwright.food.Food;
import batchwright.food.Nutrient;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.plan.DishRequest;
import batchwright.solve.mip.BranchAndBound;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Expression;
import batchwright.solve.mip.MipModel;
import batchwright.solve.mip.SearchResult;
import batchwright.solve.mip.Stop;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * All containers that are as asked, as a model: columns are the steps of each part in one container, whether an optional part
 * is in, and the packs of each food. The budget, where there is one, is a row.
 */
final class FillModel {
    private static final double INF = Double.POSITIVE_INFINITY;
    private static final int PARTS_FIRST = 0;
    private static final int THEN_PACKS = 1;

    private final DishRequest request;
    private final Needed needed;
    private final MipModel model = new MipModel();
    private final Map<Part, Column> steps = new LinkedHashMap<>();
    private final Map<Part, Column> in = new LinkedHashMap<>();
    private final Expression cost = new Expression();

    FillModel(DishRequest request) {
        this(request, true);
    }

    /** As if every food were at home. */
    static FillModel whateverIsSold(DishRequest request) {
        return new FillModel(request, false);
    }

    private FillModel(DishRequest request, boolean counted) {
        this.request = request;
        this.needed = new Needed(request);
        needed.parts().forEach(this::part);
        request.wish()
                .energy()
                .ifPresent(band -> limit(
                        Nutrient.ENERGY,
                        band.leastKcal().doubleValue(),
                        band.mostKcal().doubleValue()));
        request.wish().proteinLeastG().ifPresent(least -> limit(Nutrient.PROTEIN, least.doubleValue(), INF));
        request.wish().fatMostG().ifPresent(most -> limit(Nutrient.FAT, -INF, most.doubleValue()));
        if (counted) {
            needed.foods().forEach(this::stock);
        }
        request.budget().ifPresent(budget -> model.atMost("budget", cost, (double) budget.minor()));
    }

    /** Grams of the part in a container lie in its range, or an optional part is left out. */
    private void part(Part part) {
        Column column = model.column("steps." + part.name(), needed.fewest(part), needed.most(part), true, PARTS_FIRST);
        steps.put(part, column);
        if (request.mayHold(part) && request.mayLeaveOut(part)) {
            Column kept = model.column("in." + part.name(), 0, 1, true, PARTS_FIRST);
            in.put(part, kept);
            model.atMost("part." + part.name() + ".most", Expression.of(column).plus(kept, -Needed.mostSteps(part)), 0);
            model.atLeast(
                    "part." + part.name() + ".least", Expression.of(column).plus(kept, -Needed.leastSteps(part)), 0);
        }
    }

    private void limit(Nutrient nutrient, double least, double most) {
        model.row("container." + nutrient.label(), holds(nutrient), least - Needed.HAIR, most + Needed.HAIR);
    }

    /** A nutrient in one container, in its unit. */
    private Expression holds(Nutrient nutrient) {
        var sum = new Expression();
        steps.forEach((part, column) -> sum.plus(column, Needed.inStep(part, nutrient)));
        return sum;
    }

    /**
     * What is used of a food is at home or bought [g as purchased]. To make the relaxation tighter without losing a whole-numbered
     * point, a pack counts for no more than can be missing at all, and a part that the pantry cannot feed needs a pack.
     */
    private void stock(Food food) {
        double pantry = request.kitchen().pantryGrams(food).doubleValue();
        var balance = new Expression();
        steps.forEach((part, column) -> balance.plus(column, needed.usedByStep(part, food)));
        double missing = balance.most() - pantry;
        if (missing <= Needed.HAIR) {
            return;
        }
        var packs = new Expression();
        List<Pack> sold = request.kitchen().packsOf(food);
        boolean bothWays = sold.stream().map(Pack::isLoose).distinct().count() > 1;
        Optional<Column> loose =
                bothWays ? Optional.of(model.column("loose." + food.id(), 0, 1, true, THEN_PACKS)) : Optional.empty();
        int nth = 0;
        for (Pack pack : sold) {
            double grams = pack.grams().doubleValue();
            Column column =
                    model.column("buy." + food.id() + "." + ++nth, 0, Math.ceil(missing / grams), true, THEN_PACKS);
            balance.plus(column, -Math.min(grams, missing));
            packs.plus(column, 1);
            cost.plus(column, (double) pack.price().minor());
            loose.ifPresent(byWeight -> oneKind(column, byWeight, pack.isLoose()));
        }
        model.atMost("stock." + food.id(), balance, pantry + Needed.HAIR);
        needed.parts().stream().filter(request::mayHold).forEach(part -> {
            if (Needed.leastSteps(part) * needed.usedByStep(part, food) > pantry + Needed.HAIR) {
                Expression uses = in.containsKey(part) ? Expression.of(in.get(part)) : Expression.of(1);
                model.atLeast(
                        "pack_for." + part.name() + "." + food.id(),
                        new Expression().plus(packs, 1).plus(uses, -1),
                        0);
            }
        });
    }

    /** A food is bought by weight or in packs, not both. */
    private void oneKind(Column packs, Column byWeight, boolean loose) {
        double most = packs.upper();
        Expression row = Expression.of(packs).plus(byWeight, loose ? -most : most);
        model.atMost("one_kind." + packs.name(), row, loose ? 0 : most);
    }

    SearchResult<double[]> cheapest(Stop stop) {
        model.minimise(cost, 1);
        return search(stop);
    }

    SearchResult<double[]> least(Nutrient nutrient, Stop stop) {
        model.minimise(holds(nutrient), 0);
        return search(stop);
    }

    SearchResult<double[]> most(Nutrient nutrient, Stop stop) {
        model.minimise(new Expression().plus(holds(nutrient), -1), 0);
        return search(stop);
    }

    private SearchResult<double[]> search(Stop stop) {
        return BranchAndBound.plain(model, INF, stop).search();
    }

    /** Steps of each part, in the dish's order. */
    List<Integer> stepsIn(double[] values) {
        return needed.parts().stream()
                .map(part -> (int)
                        Math.rint(values[Objects.requireNonNull(steps.get(part)).index()]))
                .toList();
    }
}
