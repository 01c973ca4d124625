package batchwright.explain;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Part;
import batchwright.plan.PlanRequest;
import java.util.List;

/** What an eater may be served, and whether it can be had. */
final class Offered {
    private Offered() {}

    /** Dishes that the eater may eat and whose foods are at home or sold, in the order of the files. */
    static List<Dish> to(EaterInRequest at, PlanRequest request) {
        return allowed(at, request).stream()
                .filter(d -> missing(d, request.kitchen()).isEmpty())
                .toList();
    }

    static List<Dish> allowed(EaterInRequest at, PlanRequest request) {
        return request.kitchen().dishes().values().stream()
                .filter(at.wishes()::allows)
                .toList();
    }

    /** Foods of parts that cannot be left out, neither at home nor sold. */
    static List<Food> missing(Dish dish, Kitchen kitchen) {
        return dish.parts().stream()
                .filter(part -> !part.optional())
                .map(Part::mix)
                .flatMap(List::stream)
                .filter(i -> !i.isPossible(food -> canGet(food, kitchen)))
                .map(i -> i.food())
                .distinct()
                .toList();
    }

    /** To be cooked. */
    static boolean canGet(Food food, Kitchen kitchen) {
        return !kitchen.packsOf(food).isEmpty() || kitchen.pantryGrams(food).signum() > 0;
    }
}
