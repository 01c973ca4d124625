package batchwright.files.dishes;

import batchwright.files.value.Problems;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Part;
import batchwright.food.hazard.Hazard;
import batchwright.text.Span;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Says what the steps of a dish leave dangerous for everyone; refuses what is sure to do harm. */
record HazardDoubts(Dish dish, DishPlaces places, Problems problems) {
    void check() {
        int before = problems.errors();
        for (Hazard hazard : Hazard.all()) {
            List<Food> foods = hazard.in(dish);
            boolean anybody =
                    hazard.who() == Hazard.Who.EVERYONE && !hazard.signs().isEmpty();
            if (anybody && !foods.isEmpty() && problems.errors() == before) {
                say(hazard, foods);
            }
        }
    }

    private void say(Hazard hazard, List<Food> foods) {
        String names = foods.stream().map(Food::name).collect(Collectors.joining(" and "));
        String says = hazard.advice()
                .with(Map.of(
                        "dish",
                        "the dish",
                        "foods",
                        names,
                        "figure",
                        hazard.amount().toPlainString()));
        if (hazard.kind() == Hazard.Kind.BLOCK) {
            problems.error(
                    at(foods.get(0)), names + ": " + says, "expected a step that says so, before the slow cooker");
        } else {
            problems.warning(at(foods.get(0)), says, "expected a step that does it, or another food");
        }
    }

    /** The part that holds the food. */
    private Span at(Food food) {
        for (int number = 0; number < dish.parts().size(); number++) {
            Part part = dish.parts().get(number);
            if (part.shares().containsKey(food)) {
                return places.of(number, "part");
            }
        }
        return places.page().at();
    }
}
