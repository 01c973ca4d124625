package batchwright.explain.cost;

import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.food.PriceTag;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Purchase;
import batchwright.quantity.Money;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A request in which some packs have another price.
 *
 * @param asSold the pack as the shop sells it, by the pack with another price
 */
public record Repriced(PlanRequest request, Map<Pack, Pack> asSold) {
    /** @param price the other price of a pack; empty when it keeps its own */
    static Repriced of(PlanRequest request, Function<Pack, Optional<Money>> price) {
        Map<Pack, Pack> asSold = new HashMap<>();
        Map<Food, List<Pack>> packs = new LinkedHashMap<>();
        request.kitchen().packs().forEach((food, sold) -> {
            List<Pack> changed = new ArrayList<>();
            for (Pack pack : sold) {
                Pack other = price.apply(pack).map(p -> at(p, pack)).orElse(pack);
                asSold.put(other, pack);
                changed.add(other);
            }
            packs.put(food, changed);
        });
        return new Repriced(request.withKitchen(request.kitchen().withPacks(packs)), asSold);
    }

    private static Pack at(Money price, Pack p) {
        Optional<PriceTag> loose = p.loose().map(tag -> new PriceTag(p.grams(), price));
        return new Pack(p.food(), p.shop(), p.label(), p.contents(), price, loose, p.seen(), p.note());
    }

    /** How many of each pack a plan for this request buys, as the shop sells them. */
    Map<Pack, Integer> bought(Plan plan) {
        Map<Pack, Integer> bought = new LinkedHashMap<>();
        for (Purchase purchase : plan.shopping()) {
            purchase.packs().forEach((pack, count) -> bought.merge(asSold.get(pack), count, Integer::sum));
        }
        bought.values().removeIf(count -> count == 0);
        return bought;
    }
}
