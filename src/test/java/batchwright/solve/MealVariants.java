package batchwright.solve;

import batchwright.food.CookedYield;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.limit.DayTarget;
import batchwright.limit.Limit;
import batchwright.limit.Range;
import batchwright.limit.Scope;
import batchwright.limit.TestTarget;
import batchwright.person.Meals;
import batchwright.person.TimesADay;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;

/** A random request with kinds of dishes and snacks, with meals, and with boxes that are not always large enough. */
public final class MealVariants {
    private static final List<String> KINDS = List.of("", "spread", "carrier", "milk", "milk");
    private static final BigDecimal LOOSE = new BigDecimal("0.5");

    private final Random random;

    private MealVariants(long seed) {
        this.random = new Random(seed);
    }

    public static PlanRequest of(PlanRequest request, long seed) {
        var variants = new MealVariants(seed);
        PlanRequest other = request.withKitchen(variants.kitchen(request.kitchen()));
        return other.withSeats(
                other.seats().stream().map(seat -> variants.seat(other, seat)).toList());
    }

    private boolean chance(int oneIn) {
        return random.nextInt(oneIn) == 0;
    }

    private Kitchen kitchen(Kitchen k) {
        Map<Food, List<Measure>> measures = new LinkedHashMap<>();
        k.measures()
                .forEach((food, list) ->
                        measures.put(food, list.stream().map(this::ofSomeKind).toList()));
        Map<String, Dish> dishes = new LinkedHashMap<>();
        k.dishes().forEach((id, dish) -> dishes.put(id, dish(dish)));
        return new Kitchen(
                k.foods(), measures, k.yields(), k.packs(), dishes, k.pantry(), k.currency(), k.cookingDay());
    }

    private Measure ofSomeKind(Measure m) {
        return new Measure(
                m.food(), m.name(), m.grams(), m.snackMost(), m.source(), KINDS.get(random.nextInt(KINDS.size())));
    }

    private Dish dish(Dish d) {
        return new Dish(
                d.id(),
                d.name(),
                chance(2) ? List.of(Dish.Kind.values()).get(random.nextInt(Dish.Kind.values().length)) : Dish.Kind.MAIN,
                d.fridgeDays(),
                d.freezes(),
                d.reheat(),
                d.parts().stream().map(this::part).toList(),
                d.staples(),
                d.steps());
    }

    /** Everything of a part lies loose and weighs one to three times as much when it is cooked. */
    private Part part(Part p) {
        BigDecimal factor = BigDecimal.valueOf(random.nextInt(1, 4));
        List<Ingredient> mix = p.mix().stream()
                .map(i -> new Ingredient(
                        i.food(),
                        i.amount(),
                        Optional.of(
                                new CookedYield(i.food(), "boiled", factor, "memory", "invented", Optional.of(LOOSE)))))
                .toList();
        return new Part(p.name(), p.optional(), p.stepGrams(), p.pieces(), p.leastGrams(), p.mostGrams(), mix);
    }

    private Seat seat(PlanRequest request, Seat seat) {
        var wishes = seat.eater().wishes();
        int containers = wishes.containersADay();
        int most = chance(3) ? random.nextInt(containers + 1) : containers;
        var meals = new Meals(
                chance(8) ? times(most) : TimesADay.of(0, most),
                chance(5) ? times(containers) : TimesADay.NOT_SAID,
                chance(5) ? times(containers) : TimesADay.NOT_SAID,
                chance(3) ? 1 : 2,
                chance(3) ? OptionalInt.of(random.nextInt(2, 5)) : OptionalInt.empty(),
                chance(6));
        int middle = (int) request.kitchen().dishes().values().stream()
                .mapToDouble(MealVariants::middleWeight)
                .average()
                .orElse(0);
        List<Limit> limits = new ArrayList<>(seat.target().limits());
        limits.add(TestTarget.limit("container weight", Scope.CONTAINER, Nutrient.COOKED_WEIGHT)
                .with(Range.atMost(middle * (chance(2) ? random.nextInt(8, 12) : 30) / 10)));
        limits.add(TestTarget.limit("container volume", Scope.CONTAINER, Nutrient.VOLUME)
                .with(Range.atMost(2 * middle * (chance(2) ? random.nextInt(8, 12) : 30) / 10)));
        if (chance(3)) {
            int density = (int) (100.0 * seat.target().energyAimKcal() / Math.max(1, containers * middle));
            limits.add(TestTarget.limit("energy density", Scope.PER_100_G, Nutrient.ENERGY)
                    .with(
                            chance(2)
                                    ? Range.atMost(density * random.nextInt(8, 16) / 10)
                                    : Range.between(density * random.nextInt(2, 8) / 10, 3 * density)));
        }
        return new Seat(
                seat.eater().withWishes(wishes.with(meals)),
                new DayTarget(seat.target().energyAimKcal(), limits));
    }

    private TimesADay times(int most) {
        int upTo = random.nextInt(most + 1);
        return TimesADay.of(random.nextInt(upTo + 1), upTo);
    }

    private static double middleWeight(Dish dish) {
        return dish.parts().stream()
                .mapToDouble(p -> (p.leastGrams() + p.mostGrams())
                        / 2.0
                        * p.mix().get(0).yieldFactor().doubleValue())
                .sum();
    }
}
