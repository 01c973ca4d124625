package batchwright.solve.rule;

import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Expression;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A food is bought by weight or in packs and pieces, never both ways on one list. One row for each way to buy a food that is sold both ways;
 * the factor is the most packs.
 */
public record OneKindRule() implements Rule {
    @Override
    public void addTo(Draft draft) {
        if (draft.onlyBounds()) {
            return; // it hardly ever raises a bound, and makes the search longer
        }
        Map<Food, List<Pack>> sold = new LinkedHashMap<>();
        draft.menu()
                .packs()
                .forEach(pack ->
                        sold.putIfAbsent(pack.food(), draft.request().kitchen().packsOf(pack.food())));
        sold.forEach((food, packs) -> {
            if (packs.stream().map(Pack::isLoose).distinct().count() > 1) {
                add(draft, food, packs);
            }
        });
    }

    private static void add(Draft draft, Food food, List<Pack> sold) {
        Column loose = draft.model().column("loose." + food.id(), 0, 1, true, draft.rank());
        for (Pack pack : sold) {
            Column packs = draft.packs(pack);
            String row = "one_kind." + packs.name();
            if (pack.isLoose()) {
                draft.model().atMost(row, Expression.of(packs).plus(loose, -packs.upper()), 0);
            } else {
                draft.model().atMost(row, Expression.of(packs).plus(loose, packs.upper()), packs.upper());
            }
        }
    }
}
