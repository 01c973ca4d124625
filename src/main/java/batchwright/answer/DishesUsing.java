package batchwright.answer;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Part;
import batchwright.needs.Needs;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Dishes with which something of the pantry could be used up, and what to cook beside them. */
public final class DishesUsing {
    private static final int MOST_NAMED = 2;

    private final PlanAnswer answer;

    public DishesUsing(PlanAnswer answer) {
        this.answer = answer;
    }

    /**
     * At most two that are not in the plan, that every eater may eat, that keep for all days, whose foods can be had, and that
     * hold the food. First those that hold it in every container, and most of it; in others the part may be left out. Whether a
     * plan can be made of them is not looked at.
     */
    public List<Dish> of(Food food) {
        return answer.kitchen().dishes().values().stream()
                .filter(dish ->
                        grams(dish, food, false).add(grams(dish, food, true)).signum() > 0)
                .filter(dish -> inPlan().noneMatch(dish::equals))
                .filter(dish ->
                        eaters().allMatch(eater -> eater.eater().wishes().allows(dish)))
                .filter(dish -> dish.keepsUntil(answer.days()))
                .filter(this::canBeHad)
                .sorted(Comparator.comparing((Dish dish) -> grams(dish, food, false))
                        .thenComparing(dish -> grams(dish, food, true))
                        .reversed())
                .limit(MOST_NAMED)
                .toList();
    }

    /** This dish, and where it is too little for a day, as many dishes of the plan as are needed beside it. */
    public List<Dish> cookedWith(Dish using) {
        int containers = eaters().mapToInt(eater -> eater.eater().wishes().containersADay())
                .max()
                .orElse(1);
        int aDay = eaters().mapToInt(eater -> eater.eater().wishes().meals().sameDishADay())
                .min()
                .orElse(1);
        int needed = (containers + aDay - 1) / aDay;
        List<Dish> cook = new ArrayList<>(List.of(using));
        inPlan().limit(needed - 1L).forEach(cook::add);
        return cook;
    }

    private Stream<Needs> eaters() {
        return answer.needs().stream();
    }

    private Stream<Dish> inPlan() {
        return answer.plan().stream().flatMap(plan -> plan.batches().stream()).map(batch -> batch.dish());
    }

    /** Of the parts that may, or may not, be left out, halfway in their range. */
    private BigDecimal grams(Dish dish, Food food, boolean optional) {
        return dish.parts().stream()
                .filter(part -> part.optional() == optional)
                .filter(part ->
                        eaters().allMatch(eater -> eater.eater().wishes().allows(part)))
                .map(part -> BigDecimal.valueOf(OneContainer.Size.MIDDLE.grams(part))
                        .multiply(part.shares().getOrDefault(food, BigDecimal.ZERO)))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private boolean canBeHad(Dish dish) {
        Kitchen kitchen = answer.kitchen();
        return dish.parts().stream()
                .filter(part -> !part.optional())
                .map(Part::mix)
                .flatMap(List::stream)
                .allMatch(i -> !kitchen.packsOf(i.food()).isEmpty()
                        || kitchen.pantryGrams(i.food()).signum() > 0);
    }
}
