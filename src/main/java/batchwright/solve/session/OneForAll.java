package batchwright.solve.session;

import batchwright.food.Contents;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import batchwright.food.Pack;
import batchwright.plan.PlanRequest;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The question for one session that is cooked again and again. Of N sessions, each uses one Nth of a pack that keeps, and the pack is
 * paid once; a pack that does not keep is bought and paid N times. So its cheapest plan costs what the N sessions cost together, and a
 * whole pack may be shared by them, which planning one session after another does not see.
 */
final class OneForAll {
    private OneForAll() {}

    static PlanRequest of(PlanRequest request) {
        Kitchen kitchen = request.kitchen();
        int times = request.cooking().sessions();
        Map<Food, List<Pack>> packs = new LinkedHashMap<>();
        kitchen.packs()
                .forEach((food, sold) -> packs.put(
                        food,
                        sold.stream()
                                .map(pack -> food.perishable() ? boughtEachTime(pack, times) : shared(pack, times))
                                .toList()));
        return request.withBudget(Optional.empty())
                .withCooking(request.cooking().once())
                .withDays(request.days(1))
                .withKitchen(kitchen.withPacks(packs).on(kitchen.cookingDay(), shared(kitchen.pantry(), times)));
    }

    private static Pack boughtEachTime(Pack pack, int times) {
        return new Pack(
                pack.food(),
                pack.shop(),
                pack.label(),
                Contents.of(pack.grams()),
                pack.price().times(times),
                Optional.empty(),
                pack.seen(),
                pack.note());
    }

    private static Pack shared(Pack pack, int times) {
        return new Pack(
                pack.food(),
                pack.shop(),
                pack.label(),
                Contents.of(share(pack.grams(), times)),
                pack.price(),
                Optional.empty(),
                pack.seen(),
                pack.note());
    }

    /** What has a date is left out: it is there for some of the sessions only. */
    private static Map<Food, List<Lot>> shared(Map<Food, List<Lot>> pantry, int times) {
        Map<Food, List<Lot>> shared = new LinkedHashMap<>();
        pantry.forEach((food, lots) -> {
            List<Lot> mine = new ArrayList<>();
            lots.stream()
                    .filter(lot -> lot.useBy().isEmpty())
                    .forEach(lot -> mine.add(Lot.of(share(lot.grams(), times))));
            if (!mine.isEmpty()) {
                shared.put(food, mine);
            }
        });
        return shared;
    }

    private static BigDecimal share(BigDecimal grams, int times) {
        return grams.divide(BigDecimal.valueOf(times), MathContext.DECIMAL64);
    }
}
