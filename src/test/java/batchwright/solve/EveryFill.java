package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.person.DayTarget;
import batchwright.person.Wishes;
import batchwright.plan.Seat;
import batchwright.solve.EveryMenu.Amounts;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Every way to fill one container of a dish for one eater, and what a day must hold; whole numbers only. */
final class EveryFill {
    private static final Nutrient[] COUNTED = {
        Nutrient.ENERGY, Nutrient.PROTEIN, Nutrient.FAT, Nutrient.FIBRE, Nutrient.FRUIT_VEG
    };
    private static final int ENERGY = 0;
    private static final int PROTEIN = 1;
    private static final int FAT = 2;
    private static final int FIBRE = 3;
    private static final int FRUIT_VEG = 4;

    private final Wishes wishes;
    private final DayTarget target;
    private final List<Food> foods;

    EveryFill(Seat seat, List<Food> foods) {
        this.wishes = seat.eater().wishes();
        this.target = seat.target();
        this.foods = foods;
    }

    Amounts nothing() {
        return new Amounts(new long[COUNTED.length], new long[2 * foods.size()]);
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
        for (int n = 0; n < COUNTED.length; n++) {
            BigDecimal per100 = food.per100g().get(COUNTED[n]);
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

    private boolean containerIsRight(long[] holds) {
        return holds[ENERGY] >= parts(target.containerLeastKcal())
                && holds[ENERGY] <= parts(target.containerMostKcal())
                && holds[PROTEIN] >= parts(target.containerProteinLeastG());
    }

    /** Whether what is in the containers of a day and besides them together meet the day's target. */
    boolean dayIsRight(long[] containers, long[] besides) {
        long kcal = containers[ENERGY] + besides[ENERGY];
        long fat = containers[FAT] + besides[FAT];
        return kcal >= parts(target.energyLeastKcal())
                && kcal <= parts(target.energyMostKcal())
                && containers[PROTEIN] + besides[PROTEIN] >= parts(target.proteinLeastG())
                && fat >= parts(target.fatLeastG())
                && fat <= parts(target.fatMostG())
                && containers[FIBRE] + besides[FIBRE] >= parts(target.fibreLeastG())
                && containers[FRUIT_VEG] + besides[FRUIT_VEG] >= parts(target.fruitVegLeastG());
    }

    private static long parts(int amount) {
        return amount * BruteForce.PARTS;
    }
}
