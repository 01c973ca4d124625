package batchwright.files.dishes;

import batchwright.files.page.Fields;
import batchwright.files.value.Problems;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Handled;
import batchwright.food.Staple;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Where a dish says what its steps take in hand, nothing is forgotten. */
final class StepsDoubts {
    private final Dish dish;
    private final Fields fields;
    private final Problems problems;

    StepsDoubts(Dish dish, Fields fields, Problems problems) {
        this.dish = dish;
        this.fields = fields;
        this.problems = problems;
    }

    void check() {
        List<Handled> handled =
                dish.steps().stream().flatMap(step -> step.with().stream()).toList();
        if (handled.isEmpty()) {
            return;
        }
        Set<String> missing = new LinkedHashSet<>();
        dish.parts()
                .forEach(part -> part.mix().stream()
                        .map(i -> i.food())
                        .filter(food -> handled.stream().noneMatch(h -> takes(h, food, part.name())))
                        .map(Food::id)
                        .forEach(missing::add));
        dish.staples().stream()
                .filter(staple -> handled.stream().noneMatch(h -> takes(h, staple)))
                .map(Staple::name)
                .forEach(missing::add);
        if (!missing.isEmpty()) {
            problems.warning(
                    fields.place("steps"),
                    "no step takes in hand: " + String.join(", ", missing),
                    "expected each food and each staple below with: of some step");
        }
    }

    private static boolean takes(Handled handled, Food food, String part) {
        return handled.match(new Handled.Cases<Boolean>() {
            @Override
            public Boolean food(Handled.OfFood own) {
                return own.food().equals(food)
                        && own.part().filter(p -> !p.equals(part)).isEmpty();
            }

            @Override
            public Boolean part(Handled.OfPart own) {
                return own.part().equals(part);
            }

            @Override
            public Boolean staple(Handled.OfStaple own) {
                return false;
            }
        });
    }

    private static boolean takes(Handled handled, Staple staple) {
        return handled instanceof Handled.OfStaple own && own.staple().equals(staple);
    }
}
