package batchwright.solve;

import batchwright.food.CookedYield;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.limit.DayTarget;
import batchwright.limit.Limit;
import batchwright.limit.Scope;
import batchwright.person.Wishes;
import batchwright.plan.Seat;
import batchwright.solve.EveryMenu.Amounts;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Every way to fill one container of a dish for one eater, and what a day must hold; whole numbers only. */
final class EveryFill {
    private static final int ENERGY = 0;
    private static final int FAT = 1;

    /** Energy and fat, which are poured off, and whatever a limit is on. */
    private final List<Nutrient> counted;

    private final Wishes wishes;
    private final DayTarget target;
    private final List<Food> foods;
    private final BigDecimal reserve;
    private final boolean[] hasLeastOnAverage;
    private final boolean[] hasMostOnAverage;

    /** @param reserve how many grams more are at hand for each that is weighed into a container */
    EveryFill(Seat seat, List<Food> foods, BigDecimal reserve) {
        this.reserve = reserve;
        this.wishes = seat.eater().wishes();
        this.target = seat.target();
        this.foods = foods;
        this.counted = Stream.concat(
                        Stream.of(Nutrient.ENERGY, Nutrient.FAT),
                        target.limits().stream()
                                .flatMap(limit -> limit.scope() == Scope.PER_100_G
                                        ? Stream.of(limit.measured(), Nutrient.COOKED_WEIGHT)
                                        : Stream.of(limit.measured())))
                .distinct()
                .toList();
        this.hasLeastOnAverage = new boolean[counted.size()];
        this.hasMostOnAverage = new boolean[counted.size()];
        target.limits().stream()
                .filter(limit -> limit.scope() == Scope.MEAN_OF_DAYS)
                .forEach(limit -> {
                    int n = counted.indexOf(limit.measured());
                    hasLeastOnAverage[n] |= limit.range().least() > 0;
                    hasMostOnAverage[n] |= limit.range().most().isPresent();
                });
    }

    Amounts nothing() {
        return new Amounts(new long[counted.size()], new long[2 * foods.size()]);
    }

    /** Whether the eater avoids neither the food nor what it carries. */
    boolean reaches(Food food) {
        return !wishes.avoidFoods().contains(food) && carriesNothingAvoided(food);
    }

    private boolean carriesNothingAvoided(Food food) {
        return Collections.disjoint(food.allergens(), wishes.avoidAllergens());
    }

    /** grams x amount of a food; refuses amounts that are no whole number of parts. */
    Amounts ofFood(Food food, BigDecimal grams, BigDecimal share) {
        return ofFood(food, grams.multiply(share).multiply(BigDecimal.valueOf(BruteForce.PARTS)));
    }

    private Amounts ofFood(Food food, BigDecimal parts) {
        Amounts amounts = nothing();
        for (int n = 0; n < counted.size(); n++) {
            BigDecimal per100 = food.per100g().get(counted.get(n));
            amounts.holds()[n] = parts.multiply(per100).movePointLeft(2).longValueExact();
        }
        amounts.used()[foods.indexOf(food)] = parts.longValueExact();
        return amounts;
    }

    List<Amounts> of(Dish dish) {
        List<Amounts> all = new ArrayList<>();
        boolean carries = dish.parts().stream()
                        .flatMap(part -> part.mix().stream())
                        .anyMatch(i -> !carriesNothingAvoided(i.food()))
                || dish.staples().stream()
                        .anyMatch(staple -> !Collections.disjoint(staple.allergens(), wishes.avoidAllergens()));
        if (!carries && !wishes.avoidDishes().contains(dish)) {
            fill(dish.parts(), 0, nothing(), all);
        }
        return all;
    }

    private void fill(List<Part> parts, int from, Amounts sofar, List<Amounts> all) {
        if (from == parts.size()) {
            if (containerIsRight(sofar.holds())) {
                all.add(sofar);
            }
            return;
        }
        Part part = parts.get(from);
        if (part.optional()) {
            fill(parts, from + 1, sofar, all);
        }
        if (part.mix().stream().allMatch(i -> reaches(i.food()))) {
            for (int raw = part.leastGrams(); raw <= part.mostGrams(); raw += part.stepGrams()) {
                fill(parts, from + 1, sofar.plus(ofPart(part, raw), 1), all);
            }
        }
    }

    private Amounts ofPart(Part part, int raw) {
        BigDecimal whole = BigDecimal.ZERO;
        for (Ingredient i : part.mix()) {
            whole = whole.add(i.amount());
        }
        Amounts sum = nothing();
        for (Ingredient i : part.mix()) {
            // Throws when the share is no whole number of parts.
            BigDecimal parts = i.amount()
                    .multiply(BigDecimal.valueOf(raw * BruteForce.PARTS))
                    .divide(whole);
            sum = sum.plus(ofFood(i.food(), parts), 1);
            if (!part.pieces()) {
                sum.used()[foods.indexOf(i.food())] += parts.multiply(reserve).longValueExact();
            }
            BigDecimal cooked =
                    parts.multiply(i.cooked().map(CookedYield::factor).orElse(BigDecimal.ONE));
            addSize(sum, Nutrient.COOKED_WEIGHT, cooked);
            // Only of what lies looser than a stew, so that this is the room it takes.
            Optional<BigDecimal> density = i.cooked().flatMap(CookedYield::gramsPerMl);
            if (density.isPresent()) {
                addSize(sum, Nutrient.VOLUME, cooked.divide(density.get()));
            }
        }
        // Poured off, in the same whole numbers; 9 kcal in each gram.
        long fat = part.fatPouredOff()
                .grams()
                .multiply(BigDecimal.valueOf(raw * BruteForce.PARTS))
                .divide(whole)
                .longValueExact();
        sum.holds()[FAT] -= fat;
        sum.holds()[ENERGY] -= 9 * fat;
        return sum;
    }

    private void addSize(Amounts sum, Nutrient size, BigDecimal parts) {
        if (counted.contains(size)) {
            sum.holds()[counted.indexOf(size)] += parts.longValueExact();
        }
    }

    private boolean containerIsRight(long[] holds) {
        return isRight(Scope.CONTAINER, holds, 1) && isDenseEnough(holds);
    }

    /** For each 100 g that it weighs. */
    private boolean isDenseEnough(long[] holds) {
        for (Limit limit : target.limits(Scope.PER_100_G)) {
            long amount = holds[counted.indexOf(limit.measured())];
            long weight = holds[counted.indexOf(Nutrient.COOKED_WEIGHT)];
            if (100 * amount < limit.range().least() * weight
                    || (limit.range().most().isPresent()
                            && 100 * amount > limit.range().most().getAsInt() * weight)) {
                return false;
            }
        }
        return true;
    }

    /** Whether what is in the containers of a day and besides them together meet the day's target. */
    boolean dayIsRight(long[] containers, long[] besides) {
        long[] holds = containers.clone();
        for (int n = 0; n < holds.length; n++) {
            holds[n] += besides[n];
        }
        return isRight(Scope.DAY, holds, 1);
    }

    /** Whether what so many days hold together is right on the average. */
    boolean daysAreRight(long[] holds, int days) {
        return isRight(Scope.MEAN_OF_DAYS, holds, days);
    }

    private boolean isRight(Scope scope, long[] holds, int times) {
        for (Limit limit : target.limits()) {
            if (limit.scope() == scope) {
                long amount = holds[counted.indexOf(limit.measured())];
                long least = limit.range().least() * BruteForce.PARTS * times;
                boolean tooMuch = limit.range().most().isPresent()
                        && amount > limit.range().most().getAsInt() * BruteForce.PARTS * times;
                if (amount < least || tooMuch) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether, on the average of days, the first is right whenever the second is, whatever else the days hold. */
    boolean isAsGoodOnAverage(long[] first, long[] second) {
        for (int n = 0; n < first.length; n++) {
            if ((hasLeastOnAverage[n] && first[n] < second[n]) || (hasMostOnAverage[n] && first[n] > second[n])) {
                return false;
            }
        }
        return true;
    }
}
