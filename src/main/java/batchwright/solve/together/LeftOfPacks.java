package batchwright.solve.together;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import batchwright.food.Shops;
import batchwright.plan.PlanRequest;
import batchwright.plan.Session;
import batchwright.plan.Watch;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Makes a plan for all cheaper, one eater after another: the others stay as they are, what is left of their packs is free, and what more is
 * needed comes in whole packs. A change stays when the shopping for all costs less.
 */
final class LeftOfPacks {
    /** Eaters that are planned for anew; of a large shopping, what is left of packs is a small part. */
    private static final int MOST_TRIED = 24;

    private final ForOne forOne;
    private final PlanRequest request;
    private final Watch watch;
    private final Set<Dish> dishes = new HashSet<>();
    private List<MealsOfOne> meals;
    private Session best;

    private LeftOfPacks(ForOne forOne, List<MealsOfOne> meals, Session best, Watch watch) {
        this.forOne = forOne;
        this.request = forOne.all();
        this.watch = watch;
        this.meals = meals;
        this.best = best;
        best.batches().forEach(batch -> dishes.add(batch.dish()));
    }

    /** @param shopped these meals with their shopping */
    static Session used(ForOne forOne, List<MealsOfOne> meals, Session shopped, Watch watch) {
        var left = new LeftOfPacks(forOne, meals, shopped, watch);
        left.improve();
        return left.best;
    }

    private void improve() {
        int tried = 0;
        int unchanged = 0;
        for (int at = 0;
                tried < MOST_TRIED && unchanged < meals.size() && !watch.stop();
                at = (at + 1) % meals.size()) {
            unchanged = isBetter(at) ? 0 : unchanged + 1;
            tried++;
        }
    }

    private boolean isBetter(int at) {
        List<MealsOfOne> others = new ArrayList<>(meals);
        MealsOfOne mine = others.remove(at);
        Optional<Session> shopped = WholePacks.shop(OnePot.of(request, others));
        Optional<Session> anew = shopped.flatMap(session -> forOne.session(mine.seat(), dishes, kitchen(session)));
        if (anew.isEmpty()) {
            return false;
        }
        List<MealsOfOne> changed = new ArrayList<>(meals);
        changed.set(at, MealsOfOne.of(anew.get()));
        Optional<Session> all = WholePacks.shop(OnePot.of(request, changed));
        Money cost = best.cost();
        if (all.isEmpty() || all.get().cost().compareTo(cost) >= 0) {
            return false;
        }
        meals = changed;
        best = all.get();
        return true;
    }

    /** What is left of the others' packs is at home; that some of it has a date, the shopping for all takes account of. */
    private Kitchen kitchen(Session others) {
        Map<Food, List<Lot>> atHome = new LinkedHashMap<>();
        Kitchen kitchen = request.kitchen();
        for (Food food : kitchen.foods().values()) {
            BigDecimal grams = others.purchase(food)
                    .map(line -> line.leftGrams().add(kitchen.pantryGrams(food)).subtract(line.fromPantryGrams()))
                    .orElse(kitchen.pantryGrams(food));
            if (grams.signum() > 0) {
                atHome.put(food, List.of(Lot.of(grams)));
            }
        }
        return kitchen.on(kitchen.cookingDay(), atHome)
                .with(Shops.FREE.withReserve(kitchen.shops().reserve()));
    }
}
