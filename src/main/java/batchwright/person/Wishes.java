package batchwright.person;

import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Measure;
import batchwright.food.Part;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How an eater likes to be fed.
 *
 * @param containersADay how many containers each day, exactly
 * @param avoidFoods never reach this eater
 * @param avoidAllergens foods that carry one never reach this eater
 * @param avoidDishes never reach this eater
 * @param always eaten every day besides containers and snacks
 * @param snackFoods the only foods offered as snacks; empty: every measure that the files offer as a snack
 * @param snackMeasuresADay most snack measures in one day
 * @param snackKindsADay most different snack measures in one day
 */
public record Wishes(
        int containersADay,
        Set<Food> avoidFoods,
        Set<Allergen> avoidAllergens,
        Set<Dish> avoidDishes,
        List<Always> always,
        Optional<Set<Food>> snackFoods,
        int snackMeasuresADay,
        int snackKindsADay) {
    /** Something eaten every day: so many of a household measure. */
    public record Always(Measure measure, int count) {}

    public Wishes withContainersADay(int other) {
        return new Wishes(
                other, avoidFoods, avoidAllergens, avoidDishes, always, snackFoods, snackMeasuresADay, snackKindsADay);
    }

    public Wishes withAvoided(Set<Food> foods, Set<Allergen> allergens, Set<Dish> dishes) {
        return new Wishes(
                containersADay, foods, allergens, dishes, always, snackFoods, snackMeasuresADay, snackKindsADay);
    }

    public Wishes withSnacks(Optional<Set<Food>> only, int measuresADay, int kindsADay) {
        return new Wishes(
                containersADay, avoidFoods, avoidAllergens, avoidDishes, always, only, measuresADay, kindsADay);
    }

    /** Whether this food may reach the eater. */
    public boolean allows(Food food) {
        return !avoidFoods.contains(food) && food.allergens().stream().noneMatch(avoidAllergens::contains);
    }

    /** Whether this food may be offered to the eater as a snack. */
    public boolean offersAsSnack(Food food) {
        return allows(food) && snackFoods.map(only -> only.contains(food)).orElse(true);
    }

    /** Whether this part may reach the eater. */
    public boolean allows(Part part) {
        return part.mix().stream().allMatch(i -> allows(i.food()));
    }

    /**
     * Whether this dish may reach the eater. A part that can be left out may hold a disliked food, but an avoided allergen
     * anywhere in the dish excludes it: parts share a pot, a board and a spoon.
     */
    public boolean allows(Dish dish) {
        return !avoidDishes.contains(dish)
                && dish.allergens().stream().noneMatch(avoidAllergens::contains)
                && dish.parts().stream().allMatch(part -> part.optional() || allows(part));
    }
}
