package batchwright.files.profile;

import batchwright.files.value.Problems;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.Staple;
import batchwright.food.origin.Diet;
import batchwright.food.origin.Origin;
import batchwright.food.origin.Origins;
import batchwright.person.Avoided;
import batchwright.person.Wishes;
import batchwright.text.Span;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What the files cannot answer for an eater's diets: such foods are not used until their label is read. Only those are named
 * whose answer could change a plan.
 */
final class DietDoubts {
    private static final String NOT_SAID = "nothing is said of what it is made of";
    private static final int NAMED = 12;

    private final Kitchen kitchen;
    private final Avoided now;
    private final Wishes ifAllWereRight;
    /** Ids of foods and staples by what is in doubt about them. */
    private final Map<String, Set<String>> byDoubt = new LinkedHashMap<>();

    private final Set<String> ids = new LinkedHashSet<>();

    DietDoubts(Kitchen kitchen, Wishes wishes) {
        this.kitchen = kitchen;
        this.now = wishes.avoided();
        Set<String> everything = new LinkedHashSet<>(kitchen.foods().keySet());
        kitchen.dishes().values().forEach(dish -> dish.staples().forEach(staple -> everything.add(staple.id())));
        this.ifAllWereRight = wishes.with(now.withChecked(everything));
    }

    void warn(Span at, Problems problems) {
        kitchen.dishes().values().stream().filter(ifAllWereRight::allows).forEach(this::inDish);
        kitchen.snackMeasures().stream()
                .filter(ifAllWereRight::offersInPlans)
                .map(Measure::food)
                .filter(food -> !kitchen.packsOf(food).isEmpty()
                        || kitchen.pantryGrams(food).signum() > 0)
                .forEach(food -> look(food.id(), food.origins()));
        if (ids.isEmpty()) {
            return;
        }
        byDoubt.forEach((doubt, foods) -> problems.warning(
                at,
                "not used, because %s: %s".formatted(doubt, some(foods)),
                "read the label, and name those that are all right: checked: [%s]"
                        .formatted(foods.stream().limit(2).collect(Collectors.joining(", ")))));
    }

    private void inDish(Dish dish) {
        dish.parts().stream()
                .filter(part -> ifAllWereRight.allows(part))
                .forEach(part ->
                        part.mix().forEach(i -> look(i.food().id(), i.food().origins())));
        for (Staple staple : dish.staples()) {
            look(staple.id(), staple.origins());
        }
    }

    private void look(String id, Origins origins) {
        if (now.checked().contains(id)) {
            return;
        }
        var doubts = EnumSet.noneOf(Origin.class);
        boolean asks = false;
        for (Diet diet : now.diets()) {
            asks |= diet.has(origins) == Diet.Answer.ASK;
            doubts.addAll(diet.doubts(origins));
        }
        if (asks && ids.add(id)) {
            byDoubt.computeIfAbsent(
                            doubts.isEmpty() ? NOT_SAID : "there may be in it " + labels(doubts),
                            d -> new LinkedHashSet<>())
                    .add(id);
        }
    }

    private static String labels(Set<Origin> doubts) {
        return doubts.stream().map(Origin::label).collect(Collectors.joining(", "));
    }

    private static String some(Set<String> foods) {
        List<String> named = foods.stream().limit(NAMED).toList();
        int more = foods.size() - named.size();
        return String.join(", ", named) + (more > 0 ? " and " + more + " more" : "");
    }
}
