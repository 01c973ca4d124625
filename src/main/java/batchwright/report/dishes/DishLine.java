package batchwright.report.dishes;

import batchwright.answer.OneContainer;
import batchwright.food.Appliance;
import batchwright.food.Dish;
import batchwright.food.Equipment;
import batchwright.food.Kitchen;
import batchwright.food.Nutrients;
import batchwright.plan.Batch;
import batchwright.quantity.Money;
import batchwright.report.cooking.Work;
import batchwright.schedule.Schedule;
import java.util.List;
import java.util.Optional;

/**
 * A dish in a list.
 *
 * @param work of five middling containers with every part, one step after another
 * @param needs what its steps are done on in this kitchen; of a step that nothing here can do, what it asks for first
 * @param holds of one middling container with every part
 * @param cost of that container; empty when a food has no price
 */
public record DishLine(Dish dish, Work work, List<Appliance> needs, Nutrients holds, Optional<Money> cost) {
    public static DishLine of(Kitchen kitchen, Dish dish) {
        Batch usual = Work.usual(dish);
        OneContainer middle = OneContainer.of(dish, OneContainer.Size.MIDDLE, true);
        return new DishLine(
                dish,
                Work.of(Schedule.of(List.of(usual), kitchen.equipment()), usual),
                needs(dish, kitchen.equipment()),
                middle.nutrients(),
                middle.cost(kitchen));
    }

    private static List<Appliance> needs(Dish dish, Equipment equipment) {
        return dish.steps().stream()
                .map(step -> step.way(equipment).orElse(step.way()))
                .flatMap(way -> way.on().stream())
                .distinct()
                .sorted()
                .toList();
    }
}
