package batchwright.solve.rule;

import batchwright.food.Pack;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Expression;

/** Packs are bought only in shops that are gone to. One row for each pack, where trips cost anything; the factor is the most packs. */
public record ShopsRule() implements Rule {
    @Override
    public void addTo(Draft draft) {
        draft.shops()
                .forEach((name, shop) -> draft.menu().packs().stream()
                        .filter(pack -> pack.shop().equals(name))
                        .forEach(pack -> only(draft, pack, shop)));
    }

    private static void only(Draft draft, Pack pack, Column shop) {
        Column packs = draft.packs(pack);
        draft.model().atMost("shop." + packs.name(), Expression.of(packs).plus(shop, -packs.upper()), 0);
    }
}
