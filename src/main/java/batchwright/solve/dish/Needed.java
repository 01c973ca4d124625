package batchwright.solve.dish;

import batchwright.food.Food;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.plan.DishRequest;
import batchwright.plan.Portion;
import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** What a step of each part brings and takes, as the searches count it: doubles, good to far less than {@link #HAIR}. */
final class Needed {
    /** What misses a limit by less than this many kcal or g keeps it; the audit allows twice as much. */
    static final double HAIR = 5e-7;

    private final DishRequest request;
    private final List<Part> parts;

    Needed(DishRequest request) {
        this.request = request;
        this.parts = request.dish().parts();
    }

    List<Part> parts() {
        return parts;
    }

    /** Foods of the parts that may be in. */
    Set<Food> foods() {
        Set<Food> foods = new LinkedHashSet<>();
        parts.stream()
                .filter(request::mayHold)
                .forEach(p -> foods.addAll(p.shares().keySet()));
        return foods;
    }

    /** In one container, in the nutrient's unit. */
    static double inStep(Part part, Nutrient nutrient) {
        return new Portion(part, part.stepGrams()).nutrients().get(nutrient).doubleValue();
    }

    /** To be at hand of a food for all containers together [g as purchased]. */
    double usedByStep(Part part, Food food) {
        double edible = part.shares().getOrDefault(food, BigDecimal.ZERO).doubleValue() * part.stepGrams();
        double atHand = request.kitchen().shops().atHand(part).doubleValue();
        return edible * atHand * request.containers() / food.edibleShare().doubleValue();
    }

    /** Fewest steps when the part is in. */
    static int leastSteps(Part part) {
        return part.leastGrams() / part.stepGrams();
    }

    static int mostSteps(Part part) {
        return part.mostGrams() / part.stepGrams();
    }

    /** Fewest steps at all. */
    int fewest(Part part) {
        return request.mayLeaveOut(part) || !request.mayHold(part) ? 0 : leastSteps(part);
    }

    /** Every number of steps, upwards. */
    int[] choices(Part part) {
        IntStream in =
                request.mayHold(part) ? IntStream.rangeClosed(leastSteps(part), mostSteps(part)) : IntStream.empty();
        IntStream out = fewest(part) == 0 ? IntStream.of(0) : IntStream.empty();
        return IntStream.concat(out, in).distinct().toArray();
    }

    /** Most steps at all. */
    int most(Part part) {
        return request.mayHold(part) ? mostSteps(part) : 0;
    }
}
